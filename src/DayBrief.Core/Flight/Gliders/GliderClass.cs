namespace DayBrief.Flight.Gliders;

/// <summary>Classes of gliders by how they circle; each stands for many types and is none of them.</summary>
public enum GliderClass
{
    /// <summary>Early training two-seater of wood, steel tube and fabric.</summary>
    EarlyTrainer,

    /// <summary>Modern training two-seater.</summary>
    Trainer,

    /// <summary>Club-class single-seater.</summary>
    Club,

    /// <summary>Single-seater of 15 m without ballast.</summary>
    Standard,

    /// <summary>18 m and larger.</summary>
    Open,
}
