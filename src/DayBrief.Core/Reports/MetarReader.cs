using System.Globalization;

namespace DayBrief.Reports;

/// <summary>Reads METAR and SPECI.</summary>
/// <remarks>[WMO306] FM 15 and FM 16; [FAA28] for the United States' forms.</remarks>
public static class MetarReader
{
    /// <summary>All METAR and SPECI in a text, with bulletin headings or not; those without station or time are left
    /// out.</summary>
    public static IReadOnlyList<AerodromeReport> ReadAll(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return ReadableReports.ReadAll(ReportText.Split(text).Where(report => report.Kind != "TAF"), Read);
    }

    /// <summary>The first METAR or SPECI in a text.</summary>
    /// <exception cref="InvalidReportException">There is none, or it has no station or time.</exception>
    public static AerodromeReport Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Read(ReportText.Split(text).Find(report => report.Kind != "TAF")
            ?? throw new InvalidReportException("The text holds no METAR and no SPECI.", 1, null));
    }

    private static AerodromeReport Read(ReportText text)
    {
        var head = ReportHead.Read(text);
        var (body, trends, remarks) = Parts(text.Groups.Skip(head.First).ToList());
        var reading = new MetarBody();
        for (var i = 0; i < body.Count; i++)
        {
            reading.Take(body[i], i + 1 < body.Count ? body[i + 1] : null);
        }

        return reading.Report(text, head) with
        {
            Trends = [.. trends.Select(Trend)],
            Remarks = remarks,
        };
    }

    private static (List<string> Body, List<List<string>> Trends, string? Remarks) Parts(List<string> groups)
    {
        var body = new List<string>();
        var trends = new List<List<string>>();
        for (var i = 0; i < groups.Count; i++)
        {
            if (groups[i] == "RMK")
            {
                return (body, trends, string.Join(' ', groups.Skip(i + 1)));
            }

            if (groups[i] is "NOSIG" or "BECMG" or "TEMPO")
            {
                trends.Add([]);
            }

            (trends.Count > 0 ? trends[^1] : body).Add(groups[i]);
        }

        return (body, trends, null);
    }

    private static ForecastGroup Trend(List<string> groups)
    {
        var reading = new ConditionsReading();
        DayTime? from = null;
        DayTime? to = null;
        for (var i = 1; i < groups.Count; i++)
        {
            if (GroupShapes.TrendTime().Match(groups[i]) is { Success: true } time)
            {
                // Trends give hours and minutes of the next two hours; the day is not stated and left as 0.
                var invariant = CultureInfo.InvariantCulture;
                var at = new DayTime(0, int.Parse(time.Groups[2].ValueSpan, invariant), int.Parse(time.Groups[3].ValueSpan, invariant));
                (from, to) = time.Groups[1].Value == "TL" ? (from, (DayTime?)at) : (at, to);
            }
            else
            {
                reading.Take(groups[i], i + 1 < groups.Count ? groups[i + 1] : null);
            }
        }

        return new()
        {
            Kind = groups[0] switch { "BECMG" => ForecastKind.Becoming, "TEMPO" => ForecastKind.Temporary, _ => ForecastKind.NoSignificantChange },
            From = from,
            To = to,
            Conditions = reading.Result,
            Raw = string.Join(' ', groups),
        };
    }
}
