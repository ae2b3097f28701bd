using DayBrief.Days;
using DayBrief.Logs;
using DayBrief.Logs.Circling;
using DayBrief.Logs.Igc;
using DayBrief.Reports;
using DayBrief.Scores;
using DayBrief.Service.Features.Actuals;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Verifying;

/// <summary>A figure that came true, and the moments to compare with; no moments: the day as a whole.</summary>
internal sealed record Truth(double Value, IReadOnlyList<DateTimeOffset> At);

/// <summary>What came true on a day, from whatever its files hold; SI, heights above the field. What nobody saw is null.</summary>
internal sealed record DayTruth
{
    /// <summary>Depth of the stirred layer in the afternoon ascent, at its time.</summary>
    public Truth? DepthM { get; private init; }

    /// <summary>Highest top: as written down, else of the climbs flown.</summary>
    public Truth? TopM { get; private init; }

    /// <summary>Cloud base: as written down, else the lowest layer of each report below 4,500 m from noon on.</summary>
    public Truth? BaseM { get; private init; }

    /// <summary>Mean climb: as written down, else of the climbs flown.</summary>
    public Truth? ClimbMs { get; private init; }

    /// <summary>First climb, minutes after local midnight.</summary>
    public Truth? FirstMin { get; private init; }

    /// <summary>Last climb, the same.</summary>
    public Truth? LastMin { get; private init; }

    /// <summary>Cloud above this is not made by thermals, m above ground. Common practice, no source.</summary>
    private const double HighestBaseM = 4500;

    /// <exception cref="InvalidInputException">A file that cannot be read; names it.</exception>
    /// <exception cref="InvalidSoundingException">The afternoon ascent cannot be used.</exception>
    public static DayTruth Of(DayFiles files, Site site)
    {
        var afternoon = files.Afternoon is { } path ? SoundingReader.Read(File.ReadAllBytes(path), Path.GetFileName(path)) : null;
        var actuals = files.Actuals is { } written ? ActualsFile.Read(File.ReadAllText(written), Path.GetFileName(written), files.Date, site.TimeZone) : [];
        var climbs = files.Flights.SelectMany(Flown).Where(climb => LocalClock.DateAt(climb.From, site.TimeZone) == files.Date).ToArray();
        var tops = actuals.Where(actual => actual.TopM is not null).ToArray();
        var noted = actuals.Where(actual => actual.ClimbMs is not null).ToArray();
        var times = noted.Length > 0
            ? noted.Select(actual => (From: actual.At, To: actual.At)).ToArray()
            : climbs.Select(climb => (climb.From, climb.To)).ToArray();
        return new()
        {
            DepthM = afternoon is not null && ObservedDepth.Of(afternoon) is { } depth
                ? new(depth.Metres, afternoon.Source.ValidAt is { } valid ? [valid] : [])
                : null,
            TopM = tops.Length > 0 ? new(tops.Max(actual => actual.TopM!.Value), []) : climbs.Length > 0 ? new(climbs.Max(climb => climb.TopM), []) : null,
            BaseM = Base(files, site, actuals),
            ClimbMs = noted.Length > 0
                ? new(noted.Average(actual => actual.ClimbMs!.Value), [.. noted.Select(actual => actual.At)])
                : climbs.Length > 0 ? new(climbs.Average(climb => climb.Ms), [.. climbs.Select(climb => climb.From)]) : null,
            FirstMin = times.Length > 0 ? new(Minutes(times.Min(time => time.From), site), []) : null,
            LastMin = times.Length > 0 ? new(Minutes(times.Max(time => time.To), site), []) : null,
        };
    }

    internal static double Minutes(DateTimeOffset at, Site site) => TimeZoneInfo.ConvertTime(at, site.TimeZone).TimeOfDay.TotalMinutes;

    private static Truth? Base(DayFiles files, Site site, IReadOnlyList<Actual> actuals)
    {
        var seen = actuals.Where(actual => actual.CloudBaseM is not null).Select(actual => (actual.At, M: actual.CloudBaseM!.Value)).ToArray();
        if (seen.Length == 0 && files.Reports is { } reports)
        {
            var noon = LocalClock.InstantOf(files.Date, new TimeOnly(12, 0), site.TimeZone);
            seen =
            [
                .. from report in MetarReader.ReadAll(File.ReadAllText(reports))
                   let at = report.Time.NearestTo(noon)
                   where !report.IsNil && at >= noon && at < noon.AddHours(9)
                   let lowest = report.Conditions.Clouds.Where(layer => layer.Base is not null).Select(layer => layer.Base!.Value.Metres).DefaultIfEmpty(double.NaN).Min()
                   where lowest <= HighestBaseM
                   select (at.Value, lowest),
            ];
        }

        return seen.Length == 0 ? null : new(seen.Average(one => one.M), [.. seen.Select(one => one.At)]);
    }

    /// <summary>Climbs of a recorder's file, tops above the ground at the first fix.</summary>
    private static IEnumerable<(DateTimeOffset From, DateTimeOffset To, double Ms, double TopM)> Flown(string path)
    {
        FlightLog log;
        try
        {
            log = IgcReader.Read(File.ReadAllBytes(path));
        }
        catch (InvalidLogException refused)
        {
            throw new InvalidInputException(new ProblemError(refused.Words, "flight-log", refused.Line, Field: Path.GetFileName(path)));
        }

        var ground = log.HeightFrom == HeightSource.Pressure ? log.Fixes[0].PressureHeightM : log.Fixes[0].GnssHeightM;
        return FlightFigures.Of(log).Climbs
            .Where(_ => log.Date is not null)
            .Select(climb => (log.At(climb.StartS)!.Value, log.At(climb.EndS)!.Value, climb.MeanMs, climb.HeightM.To - ground));
    }
}
