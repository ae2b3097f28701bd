using System.Globalization;
using DayBrief.Days;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;
using DayBrief.Texts;
using DayBrief.Units;

namespace DayBrief.Service.Features.Desk;

/// <summary>What the fields of the desk mean: everything that a brief is made of but the ascent.</summary>
internal sealed class DeskReading(DeskFields fields, SiteStore sites)
{
    private const double MetresPerFoot = 0.3048;

    private readonly FieldErrors _errors = new();

    /// <exception cref="InvalidInputException">Something cannot be used; all of it is named by its field.</exception>
    public BriefInputs Read(string soundingId, DateTimeOffset now)
    {
        var site = SiteOf();
        var inputs = new BriefInputs
        {
            SoundingId = soundingId,
            Site = site with { GroundWetness = fields.NullIfEmpty("groundWetness") ?? site.GroundWetness },
            Date = Date(),
            PreparedBy = fields.NullIfEmpty("preparedBy"),
            PreparedAt = now,
            InstructorNote = fields.NullIfEmpty("instructorNote"),
            Notes = Notes(),
            RunwayInUse = Runway(site),
            DayLimits = fields.NullIfEmpty("dayLimits"),
            ValidUntil = fields.Time("validUntil", _errors),
            Judgement = Judgement(site),
            Observation = fields.NullIfEmpty("observation"),
            Forecast = fields.NullIfEmpty("forecast"),
            AscentIndex = (int?)Number("ascentIndex"),
            AscentLatitude = Number("ascentLatitude"),
            AscentLongitude = Number("ascentLongitude"),
            AscentElevationM = Number("ascentElevationM"),
            AscentValidAt = AscentValidAt(),
            AscentConfirmed = fields["ascentConfirmed"].Length > 0,
            Assumptions = Assumptions(),
        };
        _errors.ThrowIfAny();
        BriefLimits.Check(inputs);
        return inputs;
    }

    /// <param name="field">Its name at the desk.</param>
    /// <param name="name">Its name in the outside contract, by which it has its range.</param>
    private double? Number(string field, string? name = null) =>
        InputRange.Of(name ?? field) is var range ? Number(field, range.Least, range.Most) : null;

    private double? Number(string field, double min, double max) => fields.Number(field, _errors, min, max);

    private string? Runway(SiteJson site)
    {
        if (fields.NullIfEmpty("runway") is not { } named)
            return null;
        string[] known = [.. (site.Runways ?? []).Select(runway => runway.Designator).OfType<string>()];
        if (known.FirstOrDefault(designator => string.Equals(designator, named, StringComparison.OrdinalIgnoreCase)) is { } found)
            return found;
        _errors.Add("runway", known.Length > 0 ? Words.Of($"The site has no runway {named}; it has {string.Join(", ", known)}.") : Words.Of("No runways are kept for this site; add them on its page."));
        return null;
    }

    private DateOnly Date()
    {
        var date = DateOnly.TryParse(fields["date"], CultureInfo.InvariantCulture, out var day) ? day : default;
        if (date == default)
            _errors.Add("date", "The date is needed, as year-month-day.");
        return date;
    }

    /// <summary>Day and time of the ascent, UTC; the day is the brief's unless another is given.</summary>
    private DateTimeOffset? AscentValidAt()
    {
        if (fields.NullIfEmpty("ascentTime") is not { } typed)
            return null;
        if (!AscentClock.TryRead(typed, out _))
            _errors.Add("ascentTime", $"\"{typed}\" is not a time of day; write it as 13:30.");
        else if (AscentClock.Answered(fields) is { } at)
            return at;
        else
            _errors.Add("ascentDate", "The date is needed, as year-month-day.");
        return null;
    }

    private AssumptionsJson Assumptions() => new()
    {
        MaxTemperatureC = Number("maxTemperatureC"),
        CloudOktas = Number("cloudOktas"),
        CloudByHour = Periods("cloudFrom", (from, i) => Number($"cloudOktas{i}", "oktas") is { } oktas ? new CloudFromJson(from, oktas) : null),
        WindByHour = Periods("windFrom", (from, i) =>
            Number($"windDirection{i}", "directionDeg") is var direction && Number($"windSpeed{i}", "speedKt") is var speed && Number($"windGust{i}", "gustKt") is var gust
            && (direction ?? speed ?? gust) is not null
                ? new WindFromJson(from, direction, speed, gust)
                : null),
        QnhHpa = Number("qnh", "qnhHpa"),
    };

    /// <summary>The rows that have a time; a row with figures but no time is told.</summary>
    private T[]? Periods<T>(string name, Func<string, int, T?> row)
        where T : class
    {
        var rows = new List<T>();
        for (var i = 0; i < DeskFields.Periods; i++)
        {
            var from = fields.Time($"{name}{i}", _errors);
            if (row(from?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "", i) is not { } read)
                continue;
            if (from is null && fields[$"{name}{i}"].Length == 0)
                _errors.Add($"{name}{i}", "From when? Give the local time, as 13:00.");
            rows.Add(read);
        }

        return rows.Count > 0 ? [.. rows] : null;
    }

    private NotesJson? Notes()
    {
        var notes = new NotesJson(fields.NullIfEmpty("noteBeforeSolo"), fields.NullIfEmpty("noteLocalSolo"), fields.NullIfEmpty("noteCrossCountry"));
        return notes.IsEmpty ? null : notes;
    }

    /// <summary>Typed in the site's units.</summary>
    private JudgementJson? Judgement(SiteJson site)
    {
        var metric = Choice.Parse<SiteUnits>(site.Units) == SiteUnits.Metric;
        var judgement = new JudgementJson
        {
            TriggerTemperatureC = Number("judgedTrigger", "triggerTemperatureC"),
            TriggerTime = fields.Time("judgedTriggerTime", _errors),
            UsableTopAglM = Number("judgedTop", 0, metric ? 10_000 : 33_000) is { } top ? Math.Round(top * (metric ? 1 : MetresPerFoot), 1) : null,
            ClimbMs = Number("judgedClimb", 0, metric ? 15 : 30) is { } climb
                ? metric ? climb : Math.Round(Speed.FromKnots(climb).MetresPerSecond, 4)
                : null,
            LastThermal = fields.Time("judgedLast", _errors),
            Reason = fields.NullIfEmpty("judgedReason"),
        };
        judgement.CheckTimes(_errors, "judgedLast");
        return judgement.IsEmpty ? null : judgement;
    }

    private SiteJson SiteOf()
    {
        if (fields.NullIfEmpty("site") is { } id)
        {
            if (sites.Find(id) is { } kept)
                return kept;
            _errors.Add("site", $"No site is kept under \"{id}\".");
            return new();
        }

        return new SiteJson
        {
            Name = fields.NullIfEmpty("siteName"),
            Latitude = _errors.Number("latitude", fields.Number("latitude", _errors)),
            Longitude = _errors.Number("longitude", fields.Number("longitude", _errors)),
            ElevationM = _errors.Number("elevationM", fields.Number("elevationM", _errors)),
            TimeZone = fields.NullIfEmpty("timeZone"),
            UsableDepthM = Number("usableDepthM"),
            GroundCover = fields.NullIfEmpty("groundCover"),
            Units = fields.NullIfEmpty("units"),
        };
    }
}
