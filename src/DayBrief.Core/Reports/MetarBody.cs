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
    private readonly List<string> _afterColour = [];
    private Temperature? _temperature;
    private Temperature? _dewPoint;
    private Pressure? _qnh;
    private bool _hasTemperature;
    private bool _hasPressure;
    private bool _hasColour;

    /// <summary>What follows a military colour code without a word for it: a forecast, not the observation.</summary>
    public IReadOnlyList<string> AfterColour => _afterColour;

    public void Take(string group)
    {
        if (GroupShapes.Runway().IsMatch(group) || GroupShapes.Sea().IsMatch(group))
        {
            _runway.Add(group);
        }
        else if (GroupShapes.Recent().IsMatch(group))
        {
            _recent.Add(group);
        }
        else if (!TakeOnce(group) && !Observed(group))
        {
            _other.Add(group);
        }
    }

    /// <summary>Temperature or pressure, which no trend has; false for other groups, and for a second one.</summary>
    public bool TakeOnce(string group) => Temperatures(group) || PressureGroup(group);

    public void TakeUnknown(IEnumerable<string> groups) => _other.AddRange(groups);

    private bool Observed(string group)
    {
        if (_hasColour && (new ConditionsReading().Take(group) || GroupShapes.Colour().IsMatch(group)))
        {
            _afterColour.Add(group);
            return true;
        }

        _hasColour |= (_hasPressure || _hasTemperature) && GroupShapes.Colour().IsMatch(group);
        if (VisibilityGroup.Read(group) is not null && (_hasTemperature || _hasPressure) && (_conditions.HasVisibility || _hasPressure))
        {
            return false;
        }

        // After the pressure the observation is over. What it lacks may have come late; what it has, it does not get again.
        var late = _hasPressure && (GroupShapes.Varying().IsMatch(group) || (ConditionsReading.IsSky(group) && (_conditions.HasClouds || _conditions.HasVisibility)));
        var weather = WeatherCode.Read(group);
        var taken = !late && _conditions.Take(group);
        if (taken && weather.Count > 0 && (_hasPressure || !WeatherCode.IsRegular(group)))
        {
            // Kept as weather, for a thunder not to be lost, and said as odd.
            _other.Add(group);
        }

        return taken;
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
        if (_hasTemperature || GroupShapes.Temperatures().Match(group) is not { Success: true } match)
        {
            return false;
        }

        _hasTemperature = true;
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

        if (!int.TryParse(match.Groups[2].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var value))
        {
            _hasPressure = true;
            return true;
        }

        // No altimeter setting outside these was ever due; a figure too much or too little is not taken for one.
        var hectopascals = match.Groups[1].Value == "A" ? value / 100.0 * HectopascalsPerInch : value;
        if (hectopascals is < 850 or > 1100)
        {
            return false;
        }

        _hasPressure = true;
        _qnh ??= Pressure.FromHectopascals(hectopascals);
        return true;
    }

    internal static Temperature? Celsius(string text) =>
        int.TryParse(text.TrimStart('M', '-'), NumberStyles.None, CultureInfo.InvariantCulture, out var value)
            ? Temperature.FromCelsius(text is ['M' or '-', ..] ? -value : value)
            : null;
}
