using DayBrief.Logs;
using DayBrief.Logs.Circling;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Flights;

/// <summary>A flight as the outside contract names it; UTC, SI, no names.</summary>
internal sealed record FlightJson
{
    public required FlightSourceJson Source { get; init; }

    public required string? Date { get; init; }

    /// <summary>Positions that could be read.</summary>
    public required int Fixes { get; init; }

    public required string? FirstFix { get; init; }

    public required string? LastFix { get; init; }

    public required double? IntervalS { get; init; }

    public required HeightSource HeightFrom { get; init; }

    public required IReadOnlyList<FlownClimbJson> Climbs { get; init; }

    public required int TriesLeft { get; init; }

    public required int Reversals { get; init; }

    public required IReadOnlyList<LogRemarkJson> Remarks { get; init; }

    public static FlightJson Of(FlightLog log, string? name)
    {
        var figures = FlightFigures.Of(log);
        return new()
        {
            Source = new(name, log.Recorder),
            Date = log.Date?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture),
            Fixes = log.Records,
            FirstFix = log.Fixes.Length > 0 ? Time(log, log.Fixes[0].Seconds) : null,
            LastFix = log.Fixes.Length > 0 ? Time(log, log.Fixes[^1].Seconds) : null,
            IntervalS = Json.Rounded(log.IntervalS, 1),
            HeightFrom = log.HeightFrom,
            Climbs = [.. figures.Climbs.Select(climb => FlownClimbJson.Of(log, climb))],
            TriesLeft = figures.TriesLeft,
            Reversals = figures.Reversals,
            Remarks = [.. log.Remarks.Concat(figures.Remarks).Select(remark => new LogRemarkJson(remark.Code, remark.Message.ToString(), remark.Count))],
        };
    }

    internal static string? Time(FlightLog log, double seconds) =>
        log.At(Math.Round(seconds))?.ToString("yyyy-MM-ddTHH:mm:ssZ", System.Globalization.CultureInfo.InvariantCulture);
}

/// <param name="Name">The file's name, as whoever asks gave it.</param>
/// <param name="Recorder">The recorder's maker, never its serial number.</param>
internal sealed record FlightSourceJson(string? Name, string? Recorder);

internal sealed record LogRemarkJson(string Code, string Message, int Count);
