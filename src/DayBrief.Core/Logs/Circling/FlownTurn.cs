namespace DayBrief.Logs.Circling;

/// <summary>One full turn: 360° of heading through the air.</summary>
/// <param name="StartS">Seconds since the log's first midnight.</param>
/// <param name="PeriodS">How long it took, s.</param>
/// <param name="ClimbMs">Climb of height and speed together (h + V²/2g), m/s.</param>
/// <param name="AirspeedMs">Mean true airspeed, m/s.</param>
/// <param name="SwingMs">Amplitude of the climb round the circle, first harmonic, m/s.</param>
/// <param name="CentreEastM">Centre of the circle in the air's frame, east of that of the first turn, m.</param>
/// <param name="CentreNorthM">The same, north.</param>
public sealed record FlownTurn(double StartS, double PeriodS, double ClimbMs, double AirspeedMs, double SwingMs, double CentreEastM, double CentreNorthM)
{
    private const double GravityMs2 = 9.80665;

    /// <summary>Radius in the air's frame, m: V·T/2π.</summary>
    public double RadiusM => AirspeedMs * PeriodS / (2 * Math.PI);

    /// <summary>Bank of a level, coordinated turn, degrees: tan φ = V·2π/(T·g).</summary>
    public double BankDeg => Math.Atan(AirspeedMs * 2 * Math.PI / (PeriodS * GravityMs2)) * 180 / Math.PI;
}
