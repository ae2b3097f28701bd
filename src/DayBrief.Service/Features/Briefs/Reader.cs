using DayBrief.Days;
using DayBrief.Service.Charts;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Languages;
using DayBrief.Texts;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Who reads: texts in the reader's language, figures in the reader's units, times in the site's zone. Heights are
/// above the field unless said.</summary>
internal sealed class Reader(SiteUnits units, TimeZoneInfo zone, Language language)
{
    public Language Language => language;

    public SiteUnits Units => units;

    public bool IsMetric => units == SiteUnits.Metric;

    /// <summary>The reader's unit in drawings, which round heights and climbs the same way.</summary>
    public Charts.HeightUnit Drawn => IsMetric ? Charts.HeightUnit.Metres : Charts.HeightUnit.Feet;

    public string HeightUnit => Drawn.Name();

    /// <summary>Unit of climbs.</summary>
    public string ClimbUnit => Figures.Rounding.VerticalUnit;

    /// <summary>Unit of winds.</summary>
    public string WindUnit => Figures.Rounding.SpeedUnit;

    /// <summary>Heights, winds and climbs as this reader's drawings say them; all of them rounded in one place.</summary>
    public Figures Figures => new(Drawn, language);

    /// <summary>A text without figures.</summary>
    public string this[string text] => language[text];

    /// <summary>The site's units, unless the reader asks for others; English unless said otherwise.</summary>
    public static Reader Of(Site site, string? asked = null, Language? language = null) =>
        new(Choice.Parse<SiteUnits>(asked) ?? site.Units, site.TimeZone, language ?? Language.English);

    /// <summary>A text with figures.</summary>
    public string Say(FormattableString text) => language.Say(text);

    /// <summary>A message about an ascent or an input.</summary>
    public string Say(Words words) => language.Say(words);

    /// <summary>A sentence of the computed day.</summary>
    public string Say(Phrase phrase) => phrase.In(units, language.Culture, text => language[text]);

    public string Height(double metres) => $"{HeightNumber(metres)} {HeightUnit}";

    public string HeightNumber(double metres) => Figures.Figure(metres);

    public string Climb(double metresPerSecond) => Figures.Vertical(metresPerSecond);

    public string ClimbNumber(double metresPerSecond) => Figures.VerticalFigure(metresPerSecond);

    /// <summary>A height above sea level or the field that nobody may pass; never more than it is.</summary>
    public string Ceiling(double metres) => Figures.Ceiling(metres);

    public string Distance(double metres) => Figures.Distance(metres);

    public string WindSpeed(Speed speed) => Figures.Speed(speed.MetresPerSecond);

    /// <summary>A wind that nobody may pass; never more than it is.</summary>
    public string WindLimit(Speed limit) => Figures.SpeedLimit(limit.MetresPerSecond);

    public string WindNumber(Speed speed) => Figures.Rounding.Speed(speed.MetresPerSecond).ToString("0", language.Culture);

    public string Wind(Wind wind) => Figures.Wind(wind);

    /// <summary>Three figures, to the nearest 5°, north as 360°.</summary>
    public static string Direction(Wind wind) => $"{Rounding.Direction(wind.FromDegrees):000}°";

    public static string Temperature(double celsius) => $"{TemperatureNumber(celsius)} °C";

    public static string TemperatureNumber(double celsius) => Rounding.Celsius(celsius).ToString("0", Language.English.Culture);

    public TimeZoneInfo Zone => zone;

    public DateTimeOffset InstantOf(DateOnly date, TimeOnly time) => LocalClock.InstantOf(date, time, zone);

    public string Time(DateTimeOffset at) => TimeZoneInfo.ConvertTime(at, zone).ToString("HH:mm", language.Culture);

    public string DateAndTime(DateTimeOffset at) => language.DateAndTime(TimeZoneInfo.ConvertTime(at, zone));

    public string Date(DateOnly date) => language.Date(date);

    /// <summary>How the zone is named to readers, such as "UTC+01:00".</summary>
    public string ZoneAt(DateOnly date)
    {
        var offset = zone.GetUtcOffset(date.ToDateTime(new TimeOnly(12, 0)));
        return offset == TimeSpan.Zero ? "UTC" : $"UTC{(offset < TimeSpan.Zero ? '−' : '+')}{offset:hh\\:mm}";
    }

    public string Duration(TimeSpan span) => span.TotalHours switch
    {
        < 1 => Say($"{Math.Round(span.TotalMinutes):0} min"),
        < 48 => Say($"{Math.Round(span.TotalHours):0} h"),
        _ => Say($"{Math.Round(span.TotalDays):0} days"),
    };
}
