namespace DayBrief.Flight.Thermals;

/// <summary>Which thermal is meant: the one that gliders circle in, or the mean of those they fly through.</summary>
public enum ThermalForm
{
    /// <summary>Wider and stronger: the thermal a pilot stays in (<see cref="Updrafts.PickedUpdraft"/>).</summary>
    Picked,

    /// <summary>The mean over all updrafts of the layer ([Allen2006]).</summary>
    Average,
}
