using DayBrief.Days;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>The words of a caution: its time, the cause with its figure, then what follows from it.</summary>
/// <remarks>What is advised follows [FAA-13A] and [AIM], and always defers to local rules; causes, thresholds and sources:
/// docs/cautions.md.</remarks>
internal static class HazardText
{
    public static string Title(Hazard hazard, Reader reader) => Title(hazard.Kind, reader);

    public static string Title(HazardKind kind, Reader reader) => reader[CautionWords.All[kind].Title];

    /// <summary>All of it.</summary>
    /// <param name="hazard">The hazard.</param>
    /// <param name="site">Where; its launch methods decide what thin air means.</param>
    /// <param name="reader">Who reads.</param>
    public static string Of(Hazard hazard, Site site, Reader reader)
    {
        var text = CautionWords.All[hazard.Kind].Text(hazard, site, reader);
        return (hazard.From, hazard.To) switch
        {
            ({ } from, { } to) when reader.Time(from) == reader.Time(to) => reader.Say($"About {reader.Time(from)}: {text}"),
            ({ } from, { } to) => $"{reader.Time(from)}–{reader.Time(to)}: {text}",
            ({ } from, null) => reader.Say($"From {reader.Time(from)}: {text}"),
            (null, { } to) => reader.Say($"Until {reader.Time(to)}: {text}"),
            _ => text,
        };
    }

    /// <summary>How a figure is known, as it stands behind it.</summary>
    public static string Known(Hazard hazard, Reader reader) => (hazard.Source, hazard.About) switch
    {
        (WindSource.Reported, { } station) => reader.Say($"reported at {station}"),
        (WindSource.Forecast, { } station) => reader.Say($"forecast for {station}"),
        (WindSource.Reported, null) => reader["reported"],
        (WindSource.Forecast, null) => reader["forecast"],
        (WindSource.Ascent, _) => reader["this morning"],
        _ => reader["expected"],
    };

    /// <summary>What to do about what ends flying, by its time: be down before it, or wait.</summary>
    public static string Before(Hazard hazard, Reader reader) => hazard switch
    {
        { Source: WindSource.Reported } => reader["no launching while it lasts"],
        { FromTheStart: true, To: { } end } => reader.Say($"no launching before {reader.Time(end)}"),
        { FromTheStart: true } => reader["no launching in it"],
        _ => reader["be down before it"],
    };

    /// <summary>How it is known, with the group of the forecast that says it.</summary>
    public static string KnownAs(Hazard hazard, Reader reader) => hazard switch
    {
        { Source: null } => reader["possible by the computed clouds"],
        { Quoted: { } group } => $"{Known(hazard, reader)} ({group})",
        _ => Known(hazard, reader),
    };

    /// <summary>The figure of a caution that is a speed of the wind.</summary>
    public static string Wind(Hazard hazard, Reader reader) => reader.WindSpeed(Speed.FromMetresPerSecond(hazard.Value!.Value));

    public static string Wind(double metresPerSecond, Reader reader) => reader.WindSpeed(Speed.FromMetresPerSecond(metresPerSecond));

    /// <summary>The figure of a caution that is a distance one can see.</summary>
    public static string Sight(double metres, Reader reader) => reader.Say($"{metres / 1000:0.#} km");

    /// <summary>The figure of a caution that is a height.</summary>
    public static string Height(Hazard hazard, Reader reader) => reader.Height(hazard.Value!.Value);
}
