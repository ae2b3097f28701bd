namespace DayBrief.Days;

/// <summary>The course of one computed day at every step. NaN is "no answer" inside the kernels and never leaves them.</summary>
internal sealed class DayTrack(int steps)
{
    public double[] ScreenKelvins { get; } = Empty(steps);

    public double[] SensibleWm2 { get; } = Empty(steps);

    public double[] LatentWm2 { get; } = Empty(steps);

    public double[] DepthM { get; } = Empty(steps);

    public double[] Theta { get; } = Empty(steps);

    public double[] Q { get; } = Empty(steps);

    public double[] WStar { get; } = Empty(steps);

    public double[] LclM { get; } = Empty(steps);

    public double[] CumulusCover { get; } = Empty(steps);

    /// <summary>Fog or low stratus.</summary>
    public bool[] LowCloud { get; } = new bool[steps];

    public double[] FrictionMs { get; } = Empty(steps);

    public double[] ObukhovM { get; } = Empty(steps);

    /// <summary>Temperature of the stirred layer at the ground, K.</summary>
    public double[] MixedKelvins { get; } = Empty(steps);

    /// <summary>Air of another temperature that flows in at all heights so that the temperature asked for is reached, K/h; 0 where
    /// sun and ground can give it.</summary>
    public double InflowKelvinsPerHour { get; init; }

    /// <summary>Even the driest ground under this sun would not reach the temperature asked for.</summary>
    public bool BeyondSun { get; init; }

    /// <summary>Highest screen temperature, K; NaN when none is known.</summary>
    public double MaxScreenKelvins { get; set; } = double.NaN;

    /// <summary>Highest temperature of the stirred layer at the ground, K; NaN when nothing was stirred.</summary>
    public double MaxMixedKelvins { get; set; } = double.NaN;

    /// <summary>What the heating was multiplied with to reach the temperature asked for; 1 when none was.</summary>
    public double HeatFactor { get; set; } = 1;

    /// <summary>The layer reached the top of the ascent.</summary>
    public bool TopOfAscentReached { get; set; }

    private static double[] Empty(int steps)
    {
        var values = new double[steps];
        Array.Fill(values, double.NaN);
        return values;
    }
}
