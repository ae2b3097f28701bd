namespace DayBrief.Reports;

/// <summary>Reads a weather group, also where intensity, vicinity and codes stand in another order or two groups are glued: an
/// irregular group that names thunder must not lose it.</summary>
/// <remarks>[WMO306] code table 4678; [FAA28] chapter 24.</remarks>
internal static class WeatherCode
{
    private static readonly string[] Descriptors = ["MI", "BC", "PR", "DR", "BL", "SH", "TS", "FZ"];

    private static readonly string[] Phenomena =
    [
        "DZ", "RA", "SN", "SG", "IC", "PL", "PE", "GR", "GS", "UP", "BR", "FG", "FU", "VA", "DU", "SA", "HZ", "PY", "PO", "SQ", "FC", "SS", "DS",
    ];

    private const int MostCodes = 6;

    /// <summary>What a group names; more than one where groups are glued ("TSVCSH") or joined by a stroke ("-TSRA/RA"). Empty if
    /// it is no weather group.</summary>
    public static IReadOnlyList<PresentWeather> Read(string group)
    {
        var found = new List<PresentWeather>();
        var start = 0;
        var codes = 0;
        for (var i = 0; i < group.Length;)
        {
            if (group[i] is '+' or '-' or '/')
            {
                start = codes > 0 || group[i] == '/' ? Closed(i) : start;
                i++;
                continue;
            }

            var code = i + 2 <= group.Length ? group.Substring(i, 2) : "";
            if (code == "VC")
            {
                start = codes > 0 ? Closed(i) : start;
            }
            else if (!Descriptors.Contains(code) && !Phenomena.Contains(code) || ++codes > MostCodes)
            {
                return [];
            }

            i += 2;
        }

        Closed(group.Length);
        return found.TrueForAll(weather => weather.Descriptor is not null || weather.Phenomena.Length > 0) ? found : [];

        int Closed(int end)
        {
            found.Add(One(group[start..end].Trim('/')));
            codes = 0;
            return end;
        }
    }

    /// <summary>Whether it is written as the code has it.</summary>
    public static bool IsRegular(string group) => GroupShapes.RegularWeather().IsMatch(group);

    private static PresentWeather One(string code)
    {
        var letters = code.Replace("+", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal);
        var codes = Enumerable.Range(0, letters.Length / 2).Select(i => letters.Substring(2 * i, 2)).ToList();
        var descriptors = codes.FindAll(Descriptors.Contains);
        return new(
            code,
            code.Contains('+', StringComparison.Ordinal) ? "+" : code.Contains('-', StringComparison.Ordinal) ? "-" : "",
            codes.Contains("VC"),
            descriptors.Contains("TS") ? "TS" : descriptors.FirstOrDefault(),
            [.. codes.Where(Phenomena.Contains)]);
    }
}
