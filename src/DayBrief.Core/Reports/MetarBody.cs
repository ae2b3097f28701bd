using System.Globalization;
using DayBrief.Units;

namespace DayBrief.Reports;

/// <summary>Takes the groups between the time and the trend of a METAR.</summary>
internal sealed class MetarBody
{
    /// <summary>Hectopascals in an inch of mercury at 0 °C [SI] (NIST SP 811).</summary>
    private const double HectopascalsPerInch = 33.86389;

    private readonly ConditionsReading _conditions = new();
    private readonly List<string> _runway = [];
    private readonly List<string> _recent = [];
    private readonly List<string> _other = [];
    private Temperature? _temperature;
    private Temperature? _dewPoint;
    private Pressure? _qnh;

    public void Take(string group, string? next)
    {
        if (GroupShapes.Runway().IsMatch(group))
        {
            _runway.Add(group);
        }
        else if (GroupShapes.Recent().IsMatch(group))
        {
            _recent.Add(group);
        }
        else if (!Temperatures(group) && !PressureGroup(group) && !_conditions.Take(group, next))
        {
            _other.Add(group);
        }
    }

    public AerodromeReport Report(ReportText text, ReportHead head) => new()
    {
        Raw = text.Raw,
        IsSpecial = text.Kind == "SPECI",
        Station = head.Station,
        Time = head.Time,
        IsAutomatic = head.Words.Contains("AUTO"),
        IsCorrected = head.Words.Contains("COR"),
        IsNil = head.Words.Contains("NIL"),
        Conditions = _conditions.Result,
        Temperature = _temperature,
        DewPoint = _dewPoint,
        Qnh = _qnh,
        RunwayGroups = [.. _runway],
        RecentWeather = [.. _recent],
        NotUnderstood = [.. _other],
    };

    private bool Temperatures(string group)
    {
        if (GroupShapes.Temperatures().Match(group) is not { Success: true } match)
        {
            return false;
        }

        _temperature = Celsius(match.Groups[1].Value);
        _dewPoint = Celsius(match.Groups[2].Value);
        return true;
    }

    private bool PressureGroup(string group)
    {
        if (GroupShapes.Pressure().Match(group) is not { Success: true } match)
        {
            return false;
        }

        if (int.TryParse(match.Groups[2].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var value))
        {
            _qnh ??= Pressure.FromHectopascals(match.Groups[1].Value == "Q" ? value : value / 100.0 * HectopascalsPerInch);
        }

        return true;
    }

    internal static Temperature? Celsius(string text) =>
        int.TryParse(text.TrimStart('M'), NumberStyles.None, CultureInfo.InvariantCulture, out var value)
            ? Temperature.FromCelsius(text.StartsWith('M') ? -value : value)
            : null;
}
