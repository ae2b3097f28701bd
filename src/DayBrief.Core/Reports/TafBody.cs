using System.Globalization;
using System.Text.RegularExpressions;

namespace DayBrief.Reports;

/// <summary>Takes the groups of a TAF after its validity: the initial state, then changes.</summary>
/// <param name="from">Begin of validity.</param>
/// <param name="to">End of validity.</param>
/// <param name="isOld">Whether the validity is in the form before 2008.</param>
internal sealed class TafBody(DayTime? from, DayTime? to, bool isOld)
{
    private ConditionsReading _reading = new();
    private ForecastGroup _open = new() { Kind = ForecastKind.Initial, From = from, To = to, Conditions = new(), Raw = "" };
    private List<string> _raw = [];

    public List<ForecastGroup> Groups { get; } = [];

    public List<ForecastTemperature> Maxima { get; } = [];

    public List<ForecastTemperature> Minima { get; } = [];

    public List<string> NotUnderstood { get; } = [];

    /// <summary>Words of remarks that no RMK introduces.</summary>
    public List<string> Remarks { get; } = [];

    public void TakeAll(List<string> groups)
    {
        foreach (var group in groups)
        {
            Take(group);
        }

        Close();
    }

    private void Take(string group)
    {
        if (GroupShapes.ExtremeTemperature().Match(group) is { Success: true } extreme)
        {
            _raw.Add(group);
            Extreme(extreme);
        }
        else if (Remarks.Count > 0 || group is "LAST" or "NEXT" or "LIMITED" or "AUTOMATED" or "AMD")
        {
            // "LAST NO AMDS AFT 0912 NEXT 0920", "AMD LTD TO CLD VIS AND WIND".
            Remarks.Add(group);
        }
        else if (Opens(group) || Dated(group))
        {
            _raw.Add(group);
        }
        else
        {
            _raw.Add(group);
            if (group != "CNL" && (!_reading.Take(group) || (WeatherCode.Read(group).Count > 0 && !WeatherCode.IsRegular(group))))
            {
                NotUnderstood.Add(group);
            }
        }
    }

    private void Extreme(Match extreme)
    {
        var hour = extreme.Groups[4].ValueSpan;
        var time = extreme.Groups[3].Success ? ReportHead.TimeOf(extreme.Groups[3].ValueSpan, hour, default) : OfHour(hour, default);
        if (MetarBody.Celsius(extreme.Groups[2].Value) is { } celsius && time is { } at)
        {
            (extreme.Groups[1].Value == "X" ? Maxima : Minima).Add(new(celsius, at));
        }
        else
        {
            NotUnderstood.Add(extreme.Value);
        }
    }

    /// <summary>Day for an hour without one: the first such time in the validity; null where that is not known.</summary>
    private DayTime? OfHour(ReadOnlySpan<char> hour, ReadOnlySpan<char> minute)
    {
        if (from is not { } begin || to is not { } end || ReportHead.TimeOf("01", hour, minute) is not { } time)
        {
            return null;
        }

        var isFirstDay = (60 * time.Hour) + time.Minute >= (60 * begin.Hour) + begin.Minute;
        return isFirstDay || end.Day == begin.Day ? time with { Day = begin.Day } : time with { Day = end.Day };
    }

    private bool Opens(string group)
    {
        var time = FromTime(group);
        if (time is not null || GroupShapes.AnyFromTime().IsMatch(group))
        {
            // A time that cannot be must not let what follows speak for the time before.
            NotUnderstood.AddRange(time is null ? [group] : []);
            Begin(new() { Kind = ForecastKind.From, From = time, Conditions = new(), Raw = "" });
            return true;
        }

        if (GroupShapes.Probability().Match(group) is { Success: true } percent)
        {
            var probability = int.Parse(percent.Groups[1].ValueSpan, CultureInfo.InvariantCulture);
            Begin(new() { Kind = ForecastKind.Probable, ProbabilityPercent = probability, Conditions = new(), Raw = "" });
            return true;
        }

        switch (group)
        {
            case "BECMG" or "GRADU" or "RAPID":
                Begin(new() { Kind = ForecastKind.Becoming, Conditions = new(), Raw = "" });
                return true;
            case "TEMPO" or "INTER" when _open is { Kind: ForecastKind.Probable, From: null } && _raw.Count == 1:
                _open = _open with { Kind = ForecastKind.Temporary };
                return true;
            case "TEMPO" or "INTER":
                Begin(new() { Kind = ForecastKind.Temporary, Conditions = new(), Raw = "" });
                return true;
            default:
                return false;
        }
    }

    private DayTime? FromTime(string group) =>
        ReportHead.TimeOf(GroupShapes.FromTime().Match(group))
        ?? (GroupShapes.TrendTime().Match(group) is { Success: true } old && old.Groups[1].Value == "FM"
            ? OfHour(old.Groups[2].ValueSpan, old.Groups[3].ValueSpan)
            : null);

    private bool Dated(string group)
    {
        if (_open.Kind is ForecastKind.Initial or ForecastKind.From || _open.From is not null)
        {
            return false;
        }

        if (TafReader.Period(group) is var (begin, end))
        {
            _open = _open with { From = begin, To = end };
            return true;
        }

        // Before 2008 a change gave two hours and no days; only where the validity does so too.
        if (!isOld || !_raw.TrueForAll(word => !char.IsAsciiDigit(word[0])) || !GroupShapes.PlainHours().IsMatch(group)
            || OfHour(group.AsSpan(0, 2), default) is not { } first || OfHour(group.AsSpan(2, 2), default) is not { } second)
        {
            return false;
        }

        _open = _open with { From = first, To = second };
        return true;
    }

    private void Begin(ForecastGroup next)
    {
        Close();
        (_open, _reading, _raw) = (next, new(), []);
    }

    private void Close() => Groups.Add(_open with { Conditions = _reading.Result, Raw = string.Join(' ', _raw) });
}
