using DayBrief.Soundings.Formats;

namespace DayBrief.Soundings.Quality;

/// <summary>Reported heights against the hypsometric equation over the temperatures between them [AMS].</summary>
/// <remarks>Tolerance 20 m and 1 % of the thickness: rounding of heights to 10 m and of pressure to 1 hPa (8 m), and the
/// curvature of the temperature between coarse levels. Common practice, no source. At most to 100 hPa.</remarks>
internal static class HeightCheck
{
    private const double ToleranceM = 20;
    private const double ToleranceOfThickness = 0.01;
    private const double HighestHpa = 100;

    /// <summary>Station lists and ascents often differ by 10 to 20 m (barometer, launch point, old sites).</summary>
    private const double GroundToleranceM = 30;

    public static void Check(IReadOnlyList<ReadLevel> levels, RemarkList remarks)
    {
        ReadLevel? known = null;
        ReadLevel? below = null;
        var thickness = 0.0;
        foreach (var level in levels.Where(level => level is { TemperatureC: not null, PressureHpa: >= HighestHpa }))
        {
            thickness += below is null ? 0 : AirColumn.ThicknessM(
                below.PressureHpa!.Value, below.TemperatureC!.Value, below.DewPointC, level.PressureHpa!.Value, level.TemperatureC!.Value, level.DewPointC);
            below = level;
            if (level.HeightM is not null)
            {
                if (known is not null)
                {
                    Compare(known, level, thickness, remarks);
                }

                (known, thickness) = (level, 0);
            }
        }
    }

    /// <summary>The lowest level against the elevation that the input states: another site, or heights above ground.</summary>
    public static void Ground(IReadOnlyList<ReadLevel> levels, double? elevationM, RemarkList remarks)
    {
        var ground = levels.FirstOrDefault(level => level.TemperatureC is not null);
        if (ground?.HeightM is { } height && elevationM is { } elevation && Math.Abs(height - elevation) > GroundToleranceM)
        {
            remarks.Add(
                Severity.Warning,
                "elevation-disagrees",
                $"The lowest level is at {height:0} m, the elevation is given as {elevation:0} m. Are the heights above sea level?",
                ground.PressureHpa);
        }
    }

    private static void Compare(ReadLevel lower, ReadLevel upper, double thickness, RemarkList remarks)
    {
        var reported = upper.HeightM!.Value - lower.HeightM!.Value;
        if (Math.Abs(reported - thickness) > ToleranceM + (ToleranceOfThickness * thickness))
        {
            remarks.Add(
                Severity.Warning,
                "height-disagrees",
                $"From {lower.PressureHpa:0.#} to {upper.PressureHpa:0.#} hPa the heights rise by {reported:0} m, the temperatures make it {thickness:0} m. Check heights, pressures and temperatures there.",
                upper.PressureHpa);
        }
    }
}
