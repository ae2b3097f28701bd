using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Text.Json;
using UglyToad.PdfPig;

namespace DayBrief.Service.Commands;

/// <summary>The program run as a person runs it: a process of its own, its exit code and its two outputs.</summary>
public sealed class VerbsTests
{
    [Fact]
    public async Task Analyse_prints_one_line_an_ascent()
    {
        var run = await RunAsync("analyse", Demo.Path("broad-post-frontal.txt"), Demo.Path("spreading-out.csv"), "--surface-temperature", "20");
        Assert.Equal(0, run.Exit);
        var lines = run.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(2, lines.Length);
        Assert.All(lines, line => Assert.Equal(20, JsonDocument.Parse(line).RootElement.GetProperty("dryTops")[0].GetProperty("surfaceTemperatureC").GetDouble()));
    }

    [Fact]
    public async Task A_refused_input_gives_exit_code_1_and_problem_details_on_standard_error()
    {
        var file = Path.GetTempFileName();
        await File.WriteAllTextAsync(file, "not a sounding", TestContext.Current.CancellationToken);
        var run = await RunAsync("analyse", file);
        File.Delete(file);
        Assert.Equal(1, run.Exit);
        Assert.Empty(run.Output);
        Assert.NotEmpty(JsonDocument.Parse(run.Error).RootElement.GetProperty("errors")[0].GetProperty("detail").GetString()!);
    }

    [Fact]
    public async Task Analyse_reads_folders_of_folders_in_order_and_goes_on_after_what_is_done()
    {
        var folder = Directory.CreateTempSubdirectory("daybrief-verbs-").FullName;
        foreach (var name in new[] { "b/2/y.txt", "a/1/z.txt", "a/x.txt" })
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(folder, name))!);
            File.Copy(Demo.Path("broad-post-frontal.txt"), Path.Combine(folder, name));
        }

        await File.WriteAllTextAsync(Path.Combine(folder, "a/bad.txt"), "not a sounding", TestContext.Current.CancellationToken);
        var done = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        var run = await RunAsync("analyse", folder, "--resume", done);
        Assert.Equal(1, run.Exit);
        Assert.Equal(["z.txt", "x.txt", "y.txt"], Names(run.Output));
        Assert.Contains("not-recognised", run.Error);
        var again = await RunAsync("analyse", folder, "--resume", done);
        Assert.Equal((0, ""), (again.Exit, again.Output));
        File.Delete(done);

        var site = Path.Combine(folder, "b", "site.json");
        await File.WriteAllTextAsync(site, Demo.Site, TestContext.Current.CancellationToken);
        var days = await RunAsync("day", Path.Combine(folder, "a", "1"), "--site", site, "--date", "2026-05-21", "--ensemble", "0", "--max-temperature", "17");
        Assert.Equal((0, "z.txt"), (days.Exit, Assert.Single(Names(days.Output))));
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task An_empty_folder_is_refused()
    {
        var folder = Directory.CreateTempSubdirectory("daybrief-verbs-").FullName;
        var run = await RunAsync("analyse", folder);
        Directory.Delete(folder);
        Assert.Equal(1, run.Exit);
        Assert.Contains("holds no file", run.Error);
    }

    private static string?[] Names(string output) =>
        [.. output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonDocument.Parse(line).RootElement.GetProperty("source").GetProperty("name").GetString())];

    /// <summary>Two fixes of the public example of the format; names in the head never come out.</summary>
    [Fact]
    public async Task Flight_prints_one_line_a_flight_without_names()
    {
        var file = Path.GetTempFileName();
        await File.WriteAllTextAsync(
            file,
            "AXXX987\nHFDTE120726\nHFPLTPILOTINCHARGE:Johanna Made\nB1101355206343N00006198WA0058700558\nB1101365206343N00006198WA0058800558\n",
            TestContext.Current.CancellationToken);
        var run = await RunAsync("flight", file);
        File.Delete(file);
        Assert.Equal(0, run.Exit);
        var flight = JsonDocument.Parse(run.Output).RootElement;
        Assert.Equal("2026-07-12T11:01:35Z", flight.GetProperty("firstFix").GetString());
        Assert.Equal((2, "pressure"), (flight.GetProperty("fixes").GetInt32(), flight.GetProperty("heightFrom").GetString()));
        Assert.Equal("XXX", flight.GetProperty("source").GetProperty("recorder").GetString());
        Assert.DoesNotContain("Johanna", run.Output + run.Error, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Two invented days; what came true is written down, so that error and bias can be read off by hand.</summary>
    [Fact]
    public async Task Verify_scores_the_days_of_a_folder()
    {
        var folder = Directory.CreateTempSubdirectory("daybrief-verify-").FullName;
        var site = Path.Combine(folder, "site.json");
        await File.WriteAllTextAsync(site, Demo.Site, TestContext.Current.CancellationToken);
        foreach (var day in new[] { 21, 22 })
        {
            File.Copy(Demo.Path("broad-post-frontal.txt"), Path.Combine(folder, $"2026-05-{day}.morning.txt"));
            await File.WriteAllTextAsync(Path.Combine(folder, $"2026-05-{day}.actuals.csv"), "time,top_m,climb_ms,who\n12:30,900,1.5,x\n15:10,1200,,\n", TestContext.Current.CancellationToken);
        }

        await File.WriteAllTextAsync(Path.Combine(folder, "2026-05-23.reports.txt"), "METAR ZZZZ 231250Z 24008KT 9999 SCT040 18/08 Q1018=", TestContext.Current.CancellationToken);
        var run = await RunAsync("verify", folder, "--site", site, "--ensemble", "30");
        Directory.Delete(folder, recursive: true);
        Assert.Equal("", run.Error);
        var result = JsonDocument.Parse(run.Output).RootElement;
        var first = result.GetProperty("days")[0];
        Assert.Equal((2, 1200), (result.GetProperty("days").GetArrayLength(), first.GetProperty("true").GetProperty("topM").GetDouble()));
        Assert.Equal(750, first.GetProperty("true").GetProperty("firstMin").GetDouble());
        var score = result.GetProperty("scores").GetProperty("topM");
        var told = result.GetProperty("days").EnumerateArray().Average(day => day.GetProperty("told").GetProperty("topM").GetDouble());
        Assert.Equal(told - 1200, score.GetProperty("bias").GetDouble(), 0.1);
        Assert.Equal(0, score.GetProperty("climatologyMae").GetDouble());
        Assert.Contains("2026-05-23.reports.txt", result.GetProperty("notUsed").EnumerateArray().Select(name => name.GetString()));
    }

    [Theory]
    [InlineData("no-such-verb")]
    [InlineData("analyse")]
    [InlineData("day", "x", "--site", "y")]
    [InlineData("analyse", "x", "--surface-temperature", "warm")]
    public async Task Wrong_usage_gives_exit_code_2(params string[] args) =>
        Assert.Equal(2, (await RunAsync(args)).Exit);

    [Theory]
    [InlineData("serve")]
    [InlineData("analyse")]
    [InlineData("day")]
    [InlineData("centre")]
    [InlineData("brief")]
    [InlineData("flight")]
    [InlineData("verify")]
    public async Task Every_verb_explains_itself(string verb)
    {
        var run = await RunAsync(verb, "--help");
        Assert.Equal(0, run.Exit);
        Assert.Contains("Usage:", run.Output);
    }

    [Fact]
    public async Task Brief_writes_page_sheet_and_JSON_without_a_service_and_twice_the_same()
    {
        var folder = Directory.CreateTempSubdirectory("daybrief-verbs-").FullName;
        var site = Path.Combine(folder, "site.json");
        await File.WriteAllTextAsync(site, Demo.Site, TestContext.Current.CancellationToken);
        string Out(string name) => Path.Combine(folder, name);
        string[] args = ["brief", Demo.Path("broad-post-frontal.txt"), "--site", site, "--date", "2026-05-21", "--max-temperature", "17", "--ensemble", "50"];
        var first = await RunAsync([.. args, "--pdf", Out("a.pdf"), "--html", Out("a.html"), "--json", Out("a.json")]);
        var second = await RunAsync([.. args, "--html", Out("b.html"), "--json", Out("b.json")]);
        Assert.Equal((0, 0), (first.Exit, second.Exit));
        Assert.Equal(File.ReadAllText(Out("a.json")), File.ReadAllText(Out("b.json")));
        Assert.Equal(File.ReadAllText(Out("a.html")), File.ReadAllText(Out("b.html")));
        var (pdf, html) = (PdfText(Out("a.pdf")), WebUtility.HtmlDecode(File.ReadAllText(Out("a.html"))));
        var brief = JsonDocument.Parse(File.ReadAllText(Out("a.json"))).RootElement;
        // Each group's line to carry, with its bank and speed, stands in all three.
        var lines = brief.GetProperty("technique").GetProperty("groups").EnumerateArray()
            .Where(group => group.GetProperty("glider").GetString() == "trainer").Select(group => group.GetProperty("line").GetString()!).ToArray();
        Assert.Equal(3, lines.Length);
        Assert.All(lines, line => Assert.Contains(line, html, StringComparison.Ordinal));
        Assert.All(lines, line => Assert.Contains(string.Concat(line.Split()), pdf, StringComparison.Ordinal));
        Assert.Contains("<style>", html, StringComparison.Ordinal);
        Assert.DoesNotContain("rel=\"stylesheet\"", html, StringComparison.Ordinal);
        // An unknown class is never another one in silence.
        Assert.Equal(2, (await RunAsync([.. args, "--glider", "paper"])).Exit);
        // Nobody said when it was prepared: no form says a time.
        Assert.Equal(JsonValueKind.Null, brief.GetProperty("preparedAt").ValueKind);
        Assert.Contains("When it was prepared is not known.", html, StringComparison.Ordinal);
        Assert.Contains("Whenitwaspreparedisnotknown.", pdf, StringComparison.Ordinal);
        Assert.DoesNotContain("Prepared", html[html.IndexOf("<main", StringComparison.Ordinal)..], StringComparison.Ordinal);
        var told = await RunAsync([.. args[..^4], "--max-temperature", "5", "--ensemble", "0", "--prepared-at", "2026-05-21T05:40Z", "--prepared-by", "A. Tester", "--html", Out("c.html")]);
        Assert.Equal(0, told.Exit);
        Assert.Contains("Prepared by A. Tester, Thu 21 May 2026 06:40.", WebUtility.HtmlDecode(File.ReadAllText(Out("c.html"))), StringComparison.Ordinal);
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>All its letters, without spaces.</summary>
    private static string PdfText(string path)
    {
        using var pdf = PdfDocument.Open(path);
        return string.Concat(pdf.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text));
    }

    /// <summary>An ascent without a time is told, and can be given one; one that says its time is not overruled.</summary>
    [Fact]
    public async Task A_day_says_that_the_ascents_time_is_not_known_and_takes_it_when_given()
    {
        var folder = Directory.CreateTempSubdirectory("daybrief-verbs-").FullName;
        var (site, file) = (Path.Combine(folder, "site.json"), Path.Combine(folder, "timeless.csv"));
        await File.WriteAllTextAsync(site, Demo.Site, TestContext.Current.CancellationToken);
        var dated = File.ReadAllLines(Demo.Path("anticyclone-short-dry.csv"));
        await File.WriteAllLinesAsync(file, dated.Where(line => !line.StartsWith("# valid", StringComparison.Ordinal)), TestContext.Current.CancellationToken);
        string[] args = ["day", file, "--site", site, "--date", "2026-06-24", "--ensemble", "0"];
        static string[] Codes(string output) => [.. JsonDocument.Parse(output).RootElement.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("code").GetString()!)];
        Assert.Contains("ascent-time-unknown", Codes((await RunAsync(args)).Output));
        Assert.DoesNotContain("ascent-time-unknown", Codes((await RunAsync([.. args, "--ascent-time", "2026-06-24T05:00Z"])).Output));
        args[1] = Demo.Path("anticyclone-short-dry.csv");
        Assert.Equal(1, (await RunAsync([.. args, "--ascent-time", "2026-06-24T11:00Z"])).Exit);
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>An invented forecast of two hours: the afternoon 2 K warmer aloft.</summary>
    [Fact]
    public async Task The_hours_of_a_forecast_become_one_day_with_the_later_air_aloft()
    {
        var folder = Directory.CreateTempSubdirectory("daybrief-verbs-").FullName;
        var (site, file) = (Path.Combine(folder, "site.json"), Path.Combine(folder, "forecast.csv"));
        await File.WriteAllTextAsync(site, Demo.Site, TestContext.Current.CancellationToken);
        (int Hpa, double C)[] levels = [(1000, 10), (985, 12), (950, 10), (900, 6), (850, 2), (780, -3), (700, -8), (600, -16)];
        var rows = from hour in new[] { 6, 14 }
                   from level in levels
                   select FormattableString.Invariant($"2026-05-21T{hour:00}:00Z,{level.Hpa},{level.C + (hour == 14 ? 2 : 0)},{level.C - 5}");
        await File.WriteAllLinesAsync(file, rows.Prepend("time,pressure_hpa,temperature_c,dew_point_c"), TestContext.Current.CancellationToken);
        var run = await RunAsync("brief", file, "--site", site, "--date", "2026-05-21", "--ensemble", "0");
        Directory.Delete(folder, recursive: true);
        var analysis = JsonDocument.Parse(run.Output).RootElement.GetProperty("analysis");
        Assert.Contains(analysis.GetProperty("remarks").EnumerateArray(), remark => remark.GetProperty("code").GetString() == "forecast-aloft");
        Assert.Equal(-14, analysis.GetProperty("levels").EnumerateArray().Last().GetProperty("temperatureC").GetDouble(), tolerance: 1e-6);
    }

    [Fact]
    public async Task Centre_prints_the_study_of_the_contract()
    {
        var thermal = Path.GetTempFileName();
        await File.WriteAllTextAsync(thermal, """{"coreUpdraftMs":4,"radiusM":180,"depthM":1500,"heightM":600,"lifetimeMin":null,"windShearMsPerKm":2}""", TestContext.Current.CancellationToken);
        var run = await RunAsync("centre", "--thermal", thermal, "--glider", "club", "--bank", "40", "--seed", "7");
        File.Delete(thermal);
        var study = JsonDocument.Parse(run.Output).RootElement;
        Assert.Equal(40, study.GetProperty("circle").GetProperty("bankDeg").GetDouble());
        Assert.Equal(7, study.GetProperty("seed").GetInt64());
        Assert.Equal(
            ["by-swing", "hold", "level-after-270", "reverse", "straighten-and-shift", "tighten-and-ease", "turn-on-surge"],
            study.GetProperty("ranking").EnumerateArray().Select(way => way.GetProperty("way").GetString()!).Order(StringComparer.Ordinal));
    }

    /// <summary>Whoever starts it a second time must read what to do, not the insides of a web server.</summary>
    [Fact]
    public async Task A_port_in_use_is_told_in_one_line()
    {
        using var taken = new TcpListener(System.Net.IPAddress.Loopback, 0);
        taken.Start();
        var address = $"http://127.0.0.1:{((System.Net.IPEndPoint)taken.LocalEndpoint).Port}";
        var data = Directory.CreateTempSubdirectory("daybrief-port-").FullName;
        var run = await RunAsync(["serve"], ("ASPNETCORE_URLS", address), ("DAYBRIEF_DATA", data));
        Directory.Delete(data, recursive: true);
        Assert.Equal(1, run.Exit);
        var line = Assert.Single(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(address, line, StringComparison.Ordinal);
        Assert.Contains("ASPNETCORE_URLS", line, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Output + run.Error, StringComparison.Ordinal);
    }

    /// <summary>A stall speed of 64 km/h (34.56 kt) grows by √(1/cos φ) [FAA-25]: 39.5 kt at 40°, 45.41 kt with the margin, said as 45.5 so that it holds; 45 kt keep
    /// it up to acos((1.15 · 34.56/45)²) = 38.7°.</summary>
    [Theory]
    [InlineData("40", "45", "39.5 kt", "45.5 kt", "38°")]
    [InlineData("55", "48", "45.6 kt", "52.5 kt", "46°")]
    public async Task Centre_refuses_a_speed_too_near_the_stall_and_says_what_would_do(string bank, string speed, string stall, string needed, string flattest)
    {
        var thermal = Path.GetTempFileName();
        await File.WriteAllTextAsync(thermal, """{"coreUpdraftMs":4,"radiusM":180,"depthM":1500,"heightM":600}""", TestContext.Current.CancellationToken);
        var run = await RunAsync("centre", "--thermal", thermal, "--glider", "club", "--bank", bank, "--speed", speed);
        File.Delete(thermal);
        Assert.Equal((1, ""), (run.Exit, run.Output));
        var error = JsonDocument.Parse(run.Error).RootElement.GetProperty("errors").EnumerateArray().Single();
        Assert.Equal("--speed", error.GetProperty("field").GetString());
        foreach (var figure in new[] { stall, needed, flattest })
            Assert.Contains(figure, error.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    private static Task<(int Exit, string Output, string Error)> RunAsync(params string[] args) => RunAsync(args, []);

    private static async Task<(int Exit, string Output, string Error)> RunAsync(string[] args, params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(Program).Assembly.Location, .. args])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in environment)
            start.Environment[name] = value;
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        var error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, await output, await error);
    }
}
