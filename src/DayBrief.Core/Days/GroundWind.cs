using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>How a wind at the ground is known.</summary>
public enum WindSource
{
    /// <summary>Assumed by the instructor, by hour.</summary>
    Assumed,

    /// <summary>Reported at an aerodrome.</summary>
    Reported,

    /// <summary>Forecast for an aerodrome.</summary>
    Forecast,

    /// <summary>The morning's, from the ascent.</summary>
    Ascent,
}

/// <summary>Wind at the ground over a part of the day.</summary>
/// <param name="Source">How it is known.</param>
/// <param name="Speed">Mean speed.</param>
/// <param name="FromDegrees">True direction it blows from; null when it varies.</param>
/// <param name="Gust">Gusts; null when none are named.</param>
/// <param name="From">From when; null for the whole day.</param>
/// <param name="To">Until when; null where that is open.</param>
/// <param name="Station">Of a report or forecast.</param>
public readonly record struct GroundWind(
    WindSource Source,
    Speed Speed,
    double? FromDegrees,
    Speed? Gust = null,
    DateTimeOffset? From = null,
    DateTimeOffset? To = null,
    string? Station = null)
{
    /// <summary>The strongest of it: its gusts, else its mean.</summary>
    public Speed Strongest => Gust ?? Speed;

    /// <summary>Every wind at the ground that is known of the day, by source and time. The morning's wind of the ascent
    /// speaks only where nothing else does.</summary>
    public static IReadOnlyList<GroundWind> Of(Brief brief)
    {
        GroundWind[] told = [.. Assumed(brief), .. Reported(brief), .. Forecast(brief)];
        if (told.Length > 0)
            return told;
        GroundWind[] mixed = [.. MixedDown(brief)];
        return mixed.Length == 0 && brief.WindAt(Height.FromMetres(10)) is { } morning
            ? [new(WindSource.Ascent, morning.Speed, morning.FromDegrees)]
            : mixed;
    }

    /// <summary>By the hour, the strongest of each: what the growing layer mixes down.</summary>
    private static IEnumerable<GroundWind> MixedDown(Brief brief) =>
        from step in brief.Day.Steps
        where step.SurfaceWindKt is not null
        group step by step.Time.Hour into hour
        let most = hour.MaxBy(step => step.SurfaceWindKt)!
        select new GroundWind(
            WindSource.Ascent,
            Speed.FromKnots(most.SurfaceWindKt!.Value),
            most.SurfaceWindFromDegrees,
            Speed.FromKnots(hour.Max(step => step.GustKt) ?? most.SurfaceWindKt!.Value),
            hour.First().Time,
            hour.Last().Time.AddMinutes(5));

    private static IEnumerable<GroundWind> Assumed(Brief brief)
    {
        var winds = brief.Day.Assumptions.WindByHour;
        var (start, end) = Daylight.Of(brief);
        for (var i = 0; i < winds.Length; i++)
        {
            var from = i == 0 ? start : Daylight.At(brief, winds[i].Time);
            var to = i + 1 < winds.Length ? Daylight.At(brief, winds[i + 1].Time) : end;
            if (Daylight.Clip(brief, from, to) is { } part)
                yield return new(WindSource.Assumed, winds[i].Wind.Speed, winds[i].Wind.FromDegrees, winds[i].Gust, part.From, part.To);
        }
    }

    private static IEnumerable<GroundWind> Reported(Brief brief)
    {
        if (brief.Observation is { Conditions.Wind: { Speed: { } speed } wind } report)
        {
            yield return new(WindSource.Reported, speed, wind.FromDegrees, wind.Gust, Daylight.Reported(brief), null, report.Station);
        }
    }

    private static IEnumerable<GroundWind> Forecast(Brief brief)
    {
        foreach (var part in ForecastTimes.Of(brief))
        {
            if (part.Conditions.Wind is { Speed: { } speed } wind)
                yield return new(WindSource.Forecast, speed, wind.FromDegrees, wind.Gust, part.From, part.To, brief.Forecast!.Station);
        }
    }
}
