using System.Collections.Concurrent;
using DayBrief.Days;
using DayBrief.Reports;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Makes briefs from their inputs and finds them again. What was computed once is remembered while the program runs.</summary>
internal sealed class BriefDesk(BriefStore briefs, SoundingStore soundings, TimeProvider clock)
{
    private const int Remembered = 200;

    private readonly ConcurrentDictionary<string, MadeBrief> _made = new();

    public DateTimeOffset Now => clock.GetUtcNow();

    public DateOnly Today => DateOnly.FromDateTime(Now.UtcDateTime);

    /// <summary>Computes a brief, and keeps its inputs when that has worked.</summary>
    /// <exception cref="InvalidInputException">The site or an assumption cannot be used.</exception>
    /// <exception cref="InvalidSoundingException">The day cannot be computed from this ascent.</exception>
    public MadeBrief Make(BriefInputs inputs, string? id = null)
    {
        var brief = Compute(inputs, Sounding(inputs));
        id ??= BriefStore.NewId();
        briefs.Save(id, inputs);
        return Remember(new(id, inputs, brief));
    }

    public MadeBrief? Find(string id)
    {
        if (_made.TryGetValue(id, out var made))
            return made;
        return briefs.Find(id) is { } inputs ? Remember(new(id, inputs, Compute(inputs, Sounding(inputs)))) : null;
    }

    /// <summary>The newest brief for today; else, on a new install, the demonstration.</summary>
    public MadeBrief? Current()
    {
        var all = briefs.All();
        var chosen = all.FirstOrDefault(brief => !brief.Inputs.Demonstration && brief.Inputs.Date == Today);
        chosen = chosen.Id is null ? all.FirstOrDefault(brief => !brief.Inputs.Demonstration) : chosen;
        chosen = chosen.Id is null ? all.FirstOrDefault(brief => brief.Id == DemonstrationDays.First) : chosen;
        return chosen.Id is null ? null : Find(chosen.Id);
    }

    public static Brief Compute(BriefInputs inputs, Sounding sounding) => Brief.Prepare(new()
    {
        Sounding = Completed(sounding, inputs),
        Site = inputs.Site.ToSite(),
        Date = inputs.Date,
        Assumptions = inputs.Assumptions.ToAssumptions(),
        Observation = Report("observation", inputs.Observation, MetarReader.Read),
        Forecast = Report("forecast", inputs.Forecast, TafReader.Read),
        PreparedBy = inputs.PreparedBy,
        PreparedAt = inputs.PreparedAt,
    });

    private static T? Report<T>(string field, string? text, Func<string, T> read)
        where T : class
    {
        try
        {
            return string.IsNullOrWhiteSpace(text) ? null : read(text);
        }
        catch (InvalidReportException refused)
        {
            throw new InvalidInputException(new ProblemError(refused.Message, "not-a-report", refused.Line, refused.Group, field));
        }
    }

    private Sounding Sounding(BriefInputs inputs) =>
        soundings.Choose(inputs.SoundingId, inputs.AscentIndex, inputs.Site.ToSite(), inputs.Date)
            ?? throw InvalidInputException.Field("soundingId", $"No sounding is kept under \"{inputs.SoundingId}\".");

    /// <summary>Adds what the ascent does not say itself: where it went up, and the month of a message that states none.</summary>
    private static Sounding Completed(Sounding sounding, BriefInputs inputs)
    {
        var source = sounding.Source;
        return sounding.With(source with
        {
            Position = source.Position ?? (inputs.AscentLatitude is { } north && inputs.AscentLongitude is { } east
                ? Position.FromDegrees(north, east)
                : null),
            Elevation = source.Elevation ?? (inputs.AscentElevationM is { } metres ? Altitude.FromMetres(metres) : null),
            ValidAt = source.ValidAt ?? source.DayAndHour?.LatestUpTo(inputs.Date),
        });
    }

    private MadeBrief Remember(MadeBrief made)
    {
        if (_made.Count >= Remembered)
            _made.Clear();
        return _made[made.Id!] = made;
    }
}
