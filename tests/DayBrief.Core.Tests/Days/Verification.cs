using System.Globalization;
using System.Text;
using DayBrief.BoundaryLayer;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Writes what the published cases show about the convective day, good or bad.</summary>
internal static class Verification
{
    public const string Heading = "## The convective day";

    /// <summary>The section of docs/verification.md.</summary>
    public static string Report()
    {
        var text = new StringBuilder();
        text.AppendLine(Heading).AppendLine();
        text.AppendLine("Made by `DAYBRIEF_WRITE_VERIFICATION=1 dotnet test tests/DayBrief.Core.Tests -c Release --filter FullyQualifiedName~VerificationTests`, which a test compares with this page whenever the published cases lie beside the clone. Parameters are the defaults of docs/physics.md in every case; only what a case prescribes is set.").AppendLine();
        SunAndScale(text);
        Growth(text);
        Wangara(text);
        Arm(text);
        PairsReport.Write(text);
        return text.ToString().Replace("\r\n", "\n", StringComparison.Ordinal).TrimEnd() + "\n";
    }

    private static void SunAndScale(StringBuilder text)
    {
        var golden = Position.FromDegrees(39.742476, -105.1786);
        var sun = Sun.At(golden, new DateTimeOffset(2003, 10, 17, 12, 30, 30, TimeSpan.FromHours(-7)));
        var events = new (Position Place, string Date, int Offset, string Rise, string? Set)[]
        {
            (golden, "2015-01-02", -7, "07:21:55", "16:47:43"), (golden, "2015-08-02", -7, "05:00:27", null), (golden, "2015-08-01", -7, "", "19:13:58"),
            (Position.FromDegrees(-35, 0), "1996-07-05", 0, "07:08:15", "17:01:04"), (Position.FromDegrees(-35, 0), "2004-12-04", 0, "04:38:57", "19:02:03"),
        };
        var seconds = Worst(events.SelectMany(e =>
        {
            var day = SunDay.Of(e.Place, DateOnly.Parse(e.Date, CultureInfo.InvariantCulture), Cases.SiteAt(0, 0, 0, e.Offset).TimeZone);
            return new[] { (day.Sunrise, e.Rise), (day.Sunset, e.Set) }
                .Where(pair => !string.IsNullOrEmpty(pair.Item2))
                .Select(pair => (pair.Item1!.Value.TimeOfDay - TimeSpan.Parse(pair.Item2!, CultureInfo.InvariantCulture)).TotalSeconds);
        }));
        var scale = Worst(new (double Heat, double Depth, double Expected)[] { (50, 500, 0.89), (100, 1000, 1.41), (200, 1500, 2.03), (250, 2000, 2.40), (300, 2500, 2.75), (400, 3000, 3.22) }
            .Select(row => 100 * ((ConvectiveVelocity.Ms(row.Heat / (1.2 * 1005), row.Depth, 293) / row.Expected) - 1)));
        text.AppendLine("### Sun and velocity scale").AppendLine();
        text.AppendLine("| case | worst difference | asked for | met |").AppendLine("|---|---|---|---|");
        Line(text, $"elevation, SPA reference case (2003-10-17, Golden) | {Math.Abs(sun.ElevationDegrees - 39.872046):0.0000}° | 0.05°", Math.Abs(sun.ElevationDegrees - 39.872046) <= 0.05);
        Line(text, $"sunrise and sunset, 8 SPA values (Golden, 35° south) | {seconds:0} s | 60 s", seconds <= 60);
        Line(text, $"w* of the reference table, 6 values printed to 0.01 m/s | {scale:0.0} % | 1 %", scale <= 1);
        text.AppendLine().AppendLine("The sunset printed for Golden on 2 August 2015 (19:13:58) is that of 2 August UTC, the evening of 1 August there; the local evening of 2 August has 19:12:55.").AppendLine();
    }

    private static void Growth(StringBuilder text)
    {
        text.AppendLine("### Growth against other models").AppendLine();
        text.AppendLine("| case | worst difference from 1 h on | asked for | met |").AppendLine("|---|---|---|---|");
        Line(text, $"linear profile, constant flux, A 0 to 0.25 (96 cases) | depth {Worst(Analytic()):0.00} % | 1 %", Worst(Analytic()) <= 1);
        foreach (var variant in PublishedGrowth.ClassVariants)
        {
            var rows = PublishedGrowth.AgainstClass(variant).ToArray();
            double Percent(int i) => Worst(rows.Select(row => 100 * ((row.Ours[i] / row.Theirs[i]) - 1)));
            double Plain(int i) => Worst(rows.Select(row => row.Ours[i] - row.Theirs[i]));
            Line(
                text,
                $"{variant.Name} | depth {Percent(0):0.0} %, θ {Plain(1):0.00} K, q {Plain(2):0.00} g/kg, w* {Percent(3):0.0} % | 3 %, 0.2 K, 0.2 g/kg, 3 %",
                Percent(0) <= 3 && Plain(1) <= 0.2 && Plain(2) <= 0.2 && Percent(3) <= 3);
        }

        foreach (var (name, rows) in new[] { ("UCLALES, 4 K/km", PublishedGrowth.AgainstUclales()), ("DALES, weak inversion", PublishedGrowth.AgainstDales()) })
        {
            var all = rows.ToArray();
            Line(
                text,
                $"{name} | {all.Min(row => row.OursM / row.LeastFluxM):0.00} of the least-flux height or more, {all.Max(row => row.OursM / row.GreatestGradientM):0.00} of the greatest-gradient height or less | from 0.95, to 1.05",
                all.All(row => row.OursM >= 0.95 * row.LeastFluxM && row.OursM <= 1.05 * row.GreatestGradientM));
        }

        text.AppendLine();
    }

    private static void Wangara(StringBuilder text)
    {
        text.AppendLine("### Wangara, Day 33 (16 August 1967)").AppendLine();
        text.AppendLine("Depth in m at 12, 14, 16 LST; asked for 850–1100, 1080–1280, 1200–1450. w* in m/s; Nakanishi and Niino (2009) have 1.94, 2.09, 1.91.").AppendLine();
        text.AppendLine("| flux | depth | in the band | w* |").AppendLine("|---|---|---|---|");
        foreach (var (flux, name) in new[] { ("Golaz2002", "of the model case (Golaz 2002)"), ("Hicks", "observed (Hicks 1981)"), ("NN09", "of Nakanishi and Niino, a fifth stronger") })
        {
            var day = Cases.Wangara(flux);
            var steps = new[] { 12, 14, 16 }.Select(hour => Cases.At(day, hour)).ToArray();
            var inside = steps.Zip(new[] { (850, 1100), (1080, 1280), (1200, 1450) })
                .Select(pair => pair.First.MixedLayerDepthM >= pair.Second.Item1 && pair.First.MixedLayerDepthM <= pair.Second.Item2 ? "yes" : "no");
            Line(text, $"{name} | {List(steps.Select(step => step.MixedLayerDepthM), "0")} | {string.Join(", ", inside)} | {List(steps.Select(step => step.ConvectiveVelocityScaleMs), "0.00")}");
        }

        text.AppendLine().AppendLine("With the model case's flux the depths lie in the band, with the observed one that of 14 LST 15 m above it. With the flux of Nakanishi and Niino, a fifth stronger than the model case's, 14 and 16 LST lie above it; their own depths are 1240 and 1400 m. w* must be compared with the flux of its source (third line), and is then within 10 %.").AppendLine();
    }

    private static void Arm(StringBuilder text)
    {
        var day = Cases.Arm();
        text.AppendLine("### ARM Southern Great Plains, 21 June 1997").AppendLine();
        text.AppendLine(Text($"First cumulus {day.Times.FirstCloud!.Value.UtcDateTime:HH:mm} UTC (asked for 14:18 to 16:00; large-eddy run 14:20 first cloud, 15:21 one per cent). Base then {day.Cloud.FirstBase!.Value.Metres:0} m (run 758 m at 15:30, 811 m at 16:00; asked for within 150 m). The mean top of the layer stays below the condensation level all day: it is the moistest and highest thermals that make cloud.")).AppendLine();
        text.AppendLine("| UTC | base m: ours, run | cover: ours, run | top m: ours, run mean to highest |").AppendLine("|---|---|---|---|");
        foreach (var (hour, minute, baseM, cover, tops) in new[] { (11, 20, 929, 0.35, "1039 to 1470"), (13, 20, 1174, 0.32, "1452 to 3190"), (15, 20, 1404, 0.26, "1698 to 2970"), (16, 20, 1528, 0.18, "1785 to 3110") })
        {
            var step = Cases.At(day, hour, minute);
            Line(text, $"{step.Time.UtcDateTime:HH:mm} | {step.CloudBaseAglM:0}, {baseM} | {step.CloudCoverOktas / 8:0.00}, {cover:0.00} | {step.CloudTopAglM:0}, {tops}");
        }

        text.AppendLine();
    }

    private static IEnumerable<double> Analytic()
    {
        foreach (var entrainment in new[] { 0, 0.1, 0.2, 0.25 })
        {
            foreach (var flux in new[] { 0.06, 0.1, 0.2 })
            {
                var layer = new MixedLayer(new([0, 10000], [300, 350], [0, 0]), entrainment, 0, 10);
                for (var hour = 1; hour <= 8; hour++)
                {
                    for (var i = 0; i < 120; i++)
                        layer.Advance(30, new(flux, 0));
                    yield return 100 * ((layer.DepthM / Math.Sqrt(2 * (1 + (2 * entrainment)) * flux * hour * 3600 / 0.005)) - 1);
                }
            }
        }
    }

    private static double Worst(IEnumerable<double> differences) => differences.Max(Math.Abs);

    private static string List(IEnumerable<double?> values, string format) =>
        string.Join(", ", values.Select(value => value?.ToString(format, CultureInfo.InvariantCulture) ?? "none"));

    private static void Line(StringBuilder text, FormattableString row, bool met) =>
        text.AppendLine($"| {Text(row)} | {(met ? "yes" : "**no**")} |");

    private static void Line(StringBuilder text, FormattableString row) => text.AppendLine($"| {Text(row)} |");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
