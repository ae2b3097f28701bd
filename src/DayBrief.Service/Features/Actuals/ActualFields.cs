using System.Globalization;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Actuals;

/// <summary>The page's fields as they were typed, in the site's units.</summary>
internal sealed class ActualFields(IReadOnlyDictionary<string, string>? typed = null, byte[]? photo = null)
{
    public static readonly IReadOnlyList<string> Names = ["id", "kind", "time", "top", "climb", "base", "cloud", "from", "wind", "gust", "by", "note"];

    public string this[string name] => typed?.GetValueOrDefault(name) ?? "";

    public static async Task<ActualFields> ReadAsync(HttpRequest request, CancellationToken stopping)
    {
        var form = await request.ReadFormAsync(stopping);
        return new(Names.ToDictionary(name => name, name => form[name].ToString().Trim()), await PhotoOf(form, stopping));
    }

    /// <exception cref="InvalidInputException">Names the fields of the page.</exception>
    public (Actual Entry, byte[]? Photo) Entry(SiteJson site, DateOnly date, string now)
    {
        var errors = new FieldErrors();
        var picture = photo is null ? null : Photos.Bare(photo, errors);
        var units = SiteUnitsTyped.Of(site);
        var json = new ActualJson
        {
            Id = this["id"].Length > 0 ? this["id"] : null,
            Kind = this["kind"],
            Time = this["time"].Length > 0 ? this["time"] : now,
            TopM = Number("top", errors) is { } top ? units.Metres(top) : null,
            ClimbMs = Number("climb", errors) is { } climb ? units.InMs(climb) : null,
            CloudBaseM = Number("base", errors) is { } low ? units.Metres(low) : null,
            CloudOktas = Number("cloud", errors),
            WindFromDeg = Number("from", errors),
            WindKt = Number("wind", errors) is { } wind ? units.InKnots(wind) : null,
            GustKt = Number("gust", errors) is { } gust ? units.InKnots(gust) : null,
            By = this["by"],
            Note = this["note"],
        };
        errors.ThrowIfAny();
        var (kept, _) = json.Checked(date, site.ToSite().TimeZone, "entry", withPhoto: picture is not null);
        return (kept with { HasPhoto = picture is not null }, picture);
    }

    private double? Number(string field, FieldErrors errors)
    {
        var text = this[field].Replace(',', '.');
        if (text.Length == 0)
            return null;
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
            return value;
        errors.Add(field, $"\"{this[field]}\" is not a number.");
        return null;
    }

    private static async Task<byte[]?> PhotoOf(IFormCollection form, CancellationToken stopping)
    {
        if (form.Files.GetFile("photo") is not { Length: > 0 } file)
            return null;
        using var buffer = new MemoryStream();
        await file.CopyToAsync(buffer, stopping);
        return buffer.ToArray();
    }
}
