using System.Globalization;
using DayBrief.Days;
using DayBrief.Service.Infrastructure;
using DayBrief.Units;

namespace DayBrief.Service.Features.Sites;

/// <summary>Figures as people at the site type them: heights in feet or metres, winds in knots or km/h, climbs in knots or m/s.</summary>
internal sealed class SiteUnitsTyped(SiteUnits units)
{
    /// <summary>Those of a site; of one that names none, feet and knots.</summary>
    public static SiteUnitsTyped Of(SiteJson site) => new(Choice.Parse<SiteUnits>(site.Units) ?? SiteUnits.FeetAndKnots);

    public string HeightUnit => units == SiteUnits.Metric ? "m" : "ft";

    public string SpeedUnit => Rounding.SpeedUnit;

    public string ClimbUnit => Rounding.VerticalUnit;

    private Rounding Rounding => new(units == SiteUnits.Metric);

    public string Height(double? metres) =>
        metres is { } known ? Number(units == SiteUnits.Metric ? known : Units.Height.FromMetres(known).Feet, 0) : "";

    public string Knots(double? knots) =>
        knots is { } known ? Number(units == SiteUnits.Metric ? Speed.FromKnots(known).KilometresPerHour : known, 1) : "";

    public string Ms(double? metresPerSecond) =>
        metresPerSecond is { } known ? Number(units == SiteUnits.Metric ? known : Speed.FromMetresPerSecond(known).Knots, 1) : "";

    public double Metres(double typed) => units == SiteUnits.Metric ? typed : Units.Height.FromFeet(typed).Metres;

    public double InKnots(double typed) => units == SiteUnits.Metric ? Math.Round(Speed.FromKilometresPerHour(typed).Knots, 2) : typed;

    public double InMs(double typed) => units == SiteUnits.Metric ? typed : Speed.FromKnots(typed).MetresPerSecond;

    public static string Number(double? value, int decimals) =>
        value is { } known ? Math.Round(known, decimals).ToString("0.######", CultureInfo.InvariantCulture) : "";
}
