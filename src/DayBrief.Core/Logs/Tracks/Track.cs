namespace DayBrief.Logs.Tracks;

/// <summary>A piece of a flight without gaps, once a second, in a plane that touches the earth at its first fix.</summary>
/// <remarks>Arrays of one length: metres east and north, height in m, their rates in m/s.</remarks>
internal sealed class Track(double startS, double[] eastM, double[] northM, double[] heightM, double[] eastMs, double[] northMs)
{
    /// <summary>Seconds since the log's first midnight at index 0.</summary>
    public double StartS => startS;

    public int Count => heightM.Length;

    public double[] EastM => eastM;

    public double[] NorthM => northM;

    public double[] HeightM => heightM;

    public double[] EastMs => eastMs;

    public double[] NorthMs => northMs;

    /// <summary>Motor at this second, as the recorder's sensors tell; null where they never spoke.</summary>
    public bool[]? Motor { get; init; }

    /// <summary>A value between two whole seconds, along a straight line.</summary>
    public static double At(double[] values, double index)
    {
        var below = Math.Clamp((int)Math.Floor(index), 0, values.Length - 1);
        var above = Math.Min(below + 1, values.Length - 1);
        return values[below] + ((index - below) * (values[above] - values[below]));
    }
}
