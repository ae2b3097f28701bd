using System.Globalization;
using DayBrief.Days;
using DayBrief.Service.Charts;
using DayBrief.Service.Infrastructure;
using DayBrief.Units;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Who reads: figures in the reader's units, times in the site's zone. Heights are above the field unless said.</summary>
internal sealed class Reader(SiteUnits units, TimeZoneInfo zone)
{
    private static readonly CultureInfo English = CultureInfo.InvariantCulture;

    public SiteUnits Units => units;

    public bool IsMetric => units == SiteUnits.Metric;

    /// <summary>The reader's unit in drawings, which round heights and climbs the same way.</summary>
    public Charts.HeightUnit Drawn => IsMetric ? Charts.HeightUnit.Metres : Charts.HeightUnit.Feet;

    public string HeightUnit => Drawn.Name();

    public string SpeedUnit => IsMetric ? "m/s" : "kt";

    /// <summary>The site's units, unless the reader asks for others.</summary>
    public static Reader Of(Site site, string? asked = null) =>
        new(Choice.Parse<SiteUnits>(asked) ?? site.Units, site.TimeZone);

    /// <summary>Rounded to 100 ft or 50 m: finer would claim too much.</summary>
    public string Height(double metres) => $"{HeightNumber(metres)} {HeightUnit}";

    public string HeightNumber(double metres) => Drawn.Figure(metres);

    public string Climb(double metresPerSecond) => Drawn.Vertical(metresPerSecond);

    public string ClimbNumber(double metresPerSecond) => Drawn.VerticalFigure(metresPerSecond);

    public string WindSpeed(Speed speed) =>
        $"{(IsMetric ? speed.MetresPerSecond : speed.Knots).ToString("0", English)} {SpeedUnit}";

    public string Wind(Wind wind) =>
        WindSpeed(wind.Speed).StartsWith("0 ", StringComparison.Ordinal) ? "calm" : $"{Direction(wind)} {WindSpeed(wind.Speed)}";

    /// <summary>Three figures, to the nearest 5°, north as 360°.</summary>
    public static string Direction(Wind wind)
    {
        var degrees = (int)Math.Round(wind.FromDegrees / 5) * 5 % 360;
        return $"{(degrees == 0 ? 360 : degrees):000}°";
    }

    public static string Temperature(double celsius) => $"{Math.Round(celsius).ToString("0", English).Replace('-', '−')} °C";

    public string Time(DateTimeOffset at) => TimeZoneInfo.ConvertTime(at, zone).ToString("HH:mm", English);

    public string DateAndTime(DateTimeOffset at) => TimeZoneInfo.ConvertTime(at, zone).ToString("ddd d MMM yyyy HH:mm", English);

    public static string Date(DateOnly date) => date.ToString("dddd d MMMM yyyy", English);

    /// <summary>How the zone is named to readers, such as "UTC+01:00".</summary>
    public string ZoneAt(DateOnly date)
    {
        var offset = zone.GetUtcOffset(date.ToDateTime(new TimeOnly(12, 0)));
        return offset == TimeSpan.Zero ? "UTC" : $"UTC{(offset < TimeSpan.Zero ? '−' : '+')}{offset:hh\\:mm}";
    }

    public static string Duration(TimeSpan span) => span.TotalHours switch
    {
        < 1 => $"{Math.Round(span.TotalMinutes).ToString("0", English)} min",
        < 48 => $"{Math.Round(span.TotalHours).ToString("0", English)} h",
        _ => $"{Math.Round(span.TotalDays).ToString("0", English)} days",
    };
}
