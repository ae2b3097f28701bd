using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>Several forecast profiles of one day as one column: the morning's air below, the afternoon's aloft.</summary>
public static class ForecastAloft
{
    private const double BlendM = 500;

    /// <summary>The morning profile, above the afternoon's own stirred layer turning into the afternoon profile.</summary>
    /// <remarks>The afternoon's stirred layer is the model's heating, which the day computes itself, so it is not used. Its
    /// top is where the adiabat of its surface air plus 0.5 K meets it (parcel method); from there the morning's
    /// temperature and dew point move over to the afternoon's, wholly from 500 m higher (a choice).</remarks>
    public static Sounding Compose(Sounding morning, Sounding afternoon)
    {
        var (below, above) = (Profile.Of(morning), Profile.Of(afternoon));
        var top = DryTop.From(above, above.SurfaceTemperature + TemperatureDifference.FromKelvins(0.5))?.Height.Metres ?? 0;
        return new Sounding
        {
            Source = morning.Source,
            Levels = [.. morning.Levels.Select(level => Blended(level, below, above, top))],
            WindsByHeight = morning.WindsByHeight,
            Remarks =
            [
                .. morning.Remarks,
                new Remark(
                    Severity.Info,
                    "forecast-aloft",
                    $"Above {top:0} m over the ground the column is that of the later profile ({afternoon.Source.ValidAt?.UtcDateTime:HH:mm} UTC)."),
            ],
        };
    }

    private static SoundingLevel Blended(SoundingLevel level, Profile below, Profile above, double topM)
    {
        if (level.Temperature is not { } own
            || below.HeightAt(level.Pressure) is not { } height
            || above.TemperatureAt(level.Pressure) is not { } later)
        {
            return level;
        }

        var share = Math.Clamp((height.Metres - topM) / BlendM, 0, 1);
        var temperature = own + TemperatureDifference.FromKelvins(share * (later - own).Kelvins);
        var dewPoint = level.DewPoint is { } dew && above.DewPointAt(level.Pressure) is { } laterDew
            ? dew + TemperatureDifference.FromKelvins(share * (laterDew - dew).Kelvins)
            : level.DewPoint;
        return level with
        {
            Temperature = temperature,
            DewPoint = dewPoint is { } moist && moist > temperature ? temperature : dewPoint,
        };
    }
}
