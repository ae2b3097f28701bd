using System.Globalization;

namespace DayBrief.Reports;

/// <summary>Parts a METAR after its time into observation, trends and remarks.</summary>
internal sealed class TrendReading
{
    private readonly List<List<string>> _trends = [];

    public MetarBody Body { get; } = new();

    public string? Remarks { get; private set; }

    /// <summary>The trends in the order given; groups of theirs that nobody knows go to those of the report.</summary>
    public List<ForecastGroup> Trends()
    {
        var unknown = new List<string>();
        List<ForecastGroup> trends = [.. _trends.Select(groups => Trend(groups, unknown))];
        if (Body.AfterColour.All(GroupShapes.Colour().IsMatch))
        {
            Body.TakeUnknown(Body.AfterColour);
        }
        else
        {
            trends.Add(Trend(["BECMG", .. Body.AfterColour], unknown) with { Raw = string.Join(' ', Body.AfterColour) });
        }

        Body.TakeUnknown(unknown);
        return trends;
    }

    public void TakeAll(List<string> groups)
    {
        List<string>? open = null;
        for (var i = 0; i < groups.Count; i++)
        {
            var group = groups[i];
            if (group.StartsWith("RMK", StringComparison.Ordinal) || group is "REMARK" or "REMARKS")
            {
                Remarks = string.Join(' ', groups.Skip(i + 1));
                return;
            }

            if (Opens(group, open))
            {
                _trends.Add(open = [group]);
                open = group == "NOSIG" ? null : open;
            }
            else if (open is null)
            {
                Body.Take(group);
            }
            else if (!Body.TakeOnce(group))
            {
                open.Add(group);
            }
        }
    }

    private static bool Opens(string group, List<string>? open)
    {
        if (GroupShapes.TrendTime().Match(group) is { Success: true } time ? time.Groups[1].Value == "FM" : GroupShapes.FromTime().IsMatch(group))
        {
            // After a bare BECMG or TEMPO it is the beginning of that.
            return open is null || !open.TrueForAll(IsWordOrTime) || GroupShapes.TrendTime().IsMatch(open[0]) || GroupShapes.FromTime().IsMatch(open[0]);
        }

        return group switch
        {
            "TEMPO" or "INTER" => open is not [var only] || !GroupShapes.Probability().IsMatch(only),
            "NOSIG" or "BECMG" or "GRADU" or "RAPID" => true,
            _ => GroupShapes.Probability().IsMatch(group),
        };
    }

    private static bool IsWordOrTime(string group) => Kind(group) is not null || GroupShapes.TrendTime().IsMatch(group);

    private static ForecastKind? Kind(string word) => word switch
    {
        "BECMG" or "GRADU" or "RAPID" => ForecastKind.Becoming,
        "TEMPO" or "INTER" => ForecastKind.Temporary,
        "NOSIG" => ForecastKind.NoSignificantChange,
        _ when GroupShapes.Probability().IsMatch(word) => ForecastKind.Probable,
        _ => null,
    };

    private static ForecastGroup Trend(List<string> groups, List<string> unknown)
    {
        var reading = new ConditionsReading();
        (DayTime? From, DayTime? To) time = default;
        for (var i = 0; i < groups.Count; i++)
        {
            if (Timed(groups[i], time) is { } better)
            {
                time = better;
            }
            else if (Kind(groups[i]) is null && !reading.Take(groups[i]))
            {
                unknown.Add(groups[i]);
            }
        }

        var percent = GroupShapes.Probability().Match(groups[0]);
        return new()
        {
            Kind = percent.Success && groups is [_, "TEMPO" or "INTER", ..] ? ForecastKind.Temporary : Kind(groups[0]) ?? ForecastKind.From,
            ProbabilityPercent = percent.Success ? int.Parse(percent.Groups[1].ValueSpan, CultureInfo.InvariantCulture) : null,
            From = time.From,
            To = time.To,
            Conditions = reading.Result,
            Raw = string.Join(' ', groups),
        };
    }

    // Trends give hours and minutes of the next two hours; the day is not stated and left as 0.
    private static (DayTime? From, DayTime? To)? Timed(string group, (DayTime? From, DayTime? To) known)
    {
        if (TafReader.Period(group) is var (from, to))
        {
            return (from, to);
        }

        if (ReportHead.TimeOf(GroupShapes.FromTime().Match(group)) is { } dated)
        {
            return (dated, known.To);
        }

        if (GroupShapes.TrendTime().Match(group) is not { Success: true } match)
        {
            return null;
        }

        var invariant = CultureInfo.InvariantCulture;
        var at = new DayTime(0, int.Parse(match.Groups[2].ValueSpan, invariant), int.Parse(match.Groups[3].ValueSpan, invariant));
        return match.Groups[1].Value == "TL" ? (known.From, at) : (at, known.To);
    }
}
