using System.Globalization;
using System.Text.RegularExpressions;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Actuals;

/// <summary>An entry as programs send and get it.</summary>
internal sealed partial record ActualJson
{
    private const int LongestNote = 500;
    private const int LongestName = 40;

    /// <summary>The sender's own, so that what is sent twice is kept once; given by the service where it is missing.</summary>
    public string? Id { get; init; }

    /// <summary><c>seen</c> (the default), <c>first-thermal</c>, <c>last-thermal</c>.</summary>
    public string? Kind { get; init; }

    /// <summary>Local time of day (13:30), or a whole time.</summary>
    public string? Time { get; init; }

    public double? TopM { get; init; }

    public double? ClimbMs { get; init; }

    public double? CloudBaseM { get; init; }

    public double? CloudOktas { get; init; }

    public double? WindFromDeg { get; init; }

    public double? WindKt { get; init; }

    public double? GustKt { get; init; }

    public string? By { get; init; }

    public string? Note { get; init; }

    /// <summary>Sent: a JPEG as a data URL. Got: where the photo is.</summary>
    public string? Photo { get; init; }

    /// <exception cref="InvalidInputException">Names every field that cannot be used.</exception>
    public (Actual Entry, byte[]? Photo) Checked(DateOnly date, TimeZoneInfo zone, string place, bool withPhoto = false)
    {
        var errors = new FieldErrors(place);
        var at = Time is { } time ? ActualsFile.Time(time.Trim(), date, zone) : null;
        if (at is null)
            errors.Add("time", $"Needs the local time at which it was seen, such as 13:30.");
        else if (LocalClock.DateAt(at.Value, zone) != date)
            errors.Add("time", $"Lies on another day than {date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}.");
        if (Id is not null && !Shape().IsMatch(Id))
            errors.Add("id", $"Can have letters, digits and hyphens, 8 to 40.");
        errors.Length("by", By, LongestName);
        errors.Length("note", Note, LongestNote);
        var entry = new Actual
        {
            Id = Id ?? Guid.NewGuid().ToString("N"),
            At = at ?? default,
            Kind = errors.OneOf("kind", Kind, ActualKind.Seen),
            TopM = errors.Optional("topM", TopM, 0, Actual.HighestM),
            ClimbMs = errors.Optional("climbMs", ClimbMs, 0, Actual.StrongestMs),
            CloudBaseM = errors.Optional("cloudBaseM", CloudBaseM, 0, Actual.HighestM),
            CloudOktas = (int?)errors.Optional("cloudOktas", CloudOktas, 0, 8),
            WindFromDeg = errors.Optional("windFromDeg", WindFromDeg, 0, 360),
            WindKt = errors.Optional("windKt", WindKt, 0, 150),
            GustKt = errors.Optional("gustKt", GustKt, 0, 200),
            By = Written(By),
            Note = Written(Note),
        };
        var photo = Photo is { Length: > 0 } sent ? Photos.OfDataUrl(sent, errors) : null;
        if (entry is { Kind: ActualKind.Seen, Note: null, TopM: null, ClimbMs: null, CloudBaseM: null, CloudOktas: null, WindKt: null, WindFromDeg: null, GustKt: null } && photo is null && !withPhoto)
            errors.Add("topM", $"Says nothing: give at least one of topM, climbMs, cloudBaseM, cloudOktas, windKt, note, photo.");
        errors.ThrowIfAny();
        return (entry with { HasPhoto = photo is not null }, photo);
    }

    /// <summary>As it is given back, at the field's own time.</summary>
    public static ActualJson Of(Actual actual, string site, TimeZoneInfo zone)
    {
        var local = TimeZoneInfo.ConvertTime(actual.At, zone);
        return new()
        {
            Id = actual.Id,
            Kind = Choice.NameOf(actual.Kind),
            Time = local.ToString("yyyy-MM-ddTHH:mm:sszzz", CultureInfo.InvariantCulture),
            TopM = Json.Rounded(actual.TopM, 1),
            ClimbMs = Json.Rounded(actual.ClimbMs, 3),
            CloudBaseM = Json.Rounded(actual.CloudBaseM, 1),
            CloudOktas = actual.CloudOktas,
            WindFromDeg = actual.WindFromDeg,
            WindKt = Json.Rounded(actual.WindKt, 1),
            GustKt = Json.Rounded(actual.GustKt, 1),
            By = actual.By,
            Note = actual.Note,
            Photo = actual.HasPhoto ? Photos.AddressOf(site, DateOnly.FromDateTime(local.DateTime), actual.Id) : null,
        };
    }

    private static string? Written(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();

    [GeneratedRegex("^[A-Za-z0-9-]{8,40}$")]
    private static partial Regex Shape();
}
