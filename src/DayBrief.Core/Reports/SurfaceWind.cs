using DayBrief.Units;

namespace DayBrief.Reports;

/// <summary>Wind at the surface, as reported or forecast.</summary>
public sealed record SurfaceWind
{
    /// <summary>True direction it blows from, degrees; null when variable (VRB) or not measured.</summary>
    public double? FromDegrees { get; init; }

    /// <summary>Reported as variable (VRB).</summary>
    public bool IsVariable { get; init; }

    /// <summary>Mean speed; null when not measured.</summary>
    public Speed? Speed { get; init; }

    /// <summary>Gusts.</summary>
    public Speed? Gust { get; init; }

    /// <summary>The direction varies from here, degrees …</summary>
    public double? VariesFromDegrees { get; init; }

    /// <summary>… clockwise to here, degrees.</summary>
    public double? VariesToDegrees { get; init; }
}
