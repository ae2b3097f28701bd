namespace DayBrief.Reports;

/// <summary>Takes the groups of a TAF after its validity: the initial state, then changes.</summary>
internal sealed class TafBody(DayTime? from, DayTime? to)
{
    private ConditionsReading _reading = new();
    private ForecastGroup _open = new() { Kind = ForecastKind.Initial, From = from, To = to, Conditions = new(), Raw = "" };
    private List<string> _raw = [];

    public List<ForecastGroup> Groups { get; } = [];

    public List<ForecastTemperature> Maxima { get; } = [];

    public List<ForecastTemperature> Minima { get; } = [];

    public List<string> NotUnderstood { get; } = [];

    public void TakeAll(List<string> groups)
    {
        for (var i = 0; i < groups.Count; i++)
        {
            Take(groups[i], i + 1 < groups.Count ? groups[i + 1] : null);
        }

        Close();
    }

    private void Take(string group, string? next)
    {
        if (Opens(group) || TafReader.Period(group) is { } period && Dated(period))
        {
            _raw.Add(group);
        }
        else if (GroupShapes.ExtremeTemperature().Match(group) is { Success: true } extreme)
        {
            _raw.Add(group);
            if (MetarBody.Celsius(extreme.Groups[2].Value) is { } celsius
                && ReportHead.TimeOf(extreme.Groups[3].ValueSpan, extreme.Groups[4].ValueSpan, default) is { } time)
            {
                (extreme.Groups[1].Value == "X" ? Maxima : Minima).Add(new(celsius, time));
            }
        }
        else
        {
            _raw.Add(group);
            if (group != "CNL" && !_reading.Take(group, next))
            {
                NotUnderstood.Add(group);
            }
        }
    }

    private bool Opens(string group)
    {
        if (GroupShapes.FromTime().Match(group) is { Success: true } match && ReportHead.TimeOf(match) is { } time)
        {
            Begin(new() { Kind = ForecastKind.From, From = time, Conditions = new(), Raw = "" });
            return true;
        }

        switch (group)
        {
            case "BECMG":
                Begin(new() { Kind = ForecastKind.Becoming, Conditions = new(), Raw = "" });
                return true;
            case "TEMPO" when _open is { Kind: ForecastKind.Probable, From: null }:
                _open = _open with { Kind = ForecastKind.Temporary };
                return true;
            case "TEMPO" or "INTER":
                Begin(new() { Kind = ForecastKind.Temporary, Conditions = new(), Raw = "" });
                return true;
            case "PROB30" or "PROB40":
                Begin(new() { Kind = ForecastKind.Probable, ProbabilityPercent = group == "PROB30" ? 30 : 40, Conditions = new(), Raw = "" });
                return true;
            default:
                return false;
        }
    }

    private bool Dated((DayTime From, DayTime To) period)
    {
        if (_open.Kind is ForecastKind.Initial or ForecastKind.From || _open.From is not null)
        {
            return false;
        }

        _open = _open with { From = period.From, To = period.To };
        return true;
    }

    private void Begin(ForecastGroup next)
    {
        Close();
        (_open, _reading, _raw) = (next, new(), []);
    }

    private void Close() => Groups.Add(_open with { Conditions = _reading.Result, Raw = string.Join(' ', _raw) });
}
