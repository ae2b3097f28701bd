using System.Net;
using System.Text;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Languages;

/// <summary>An instructor who works in German is told in German what is wrong with an ascent or a report, whatever is wrong with it.</summary>
[Collection(OneService.Name)]
public sealed class GermanRefusalsTests(GermanRefusalsTests.Desk desk) : IClassFixture<GermanRefusalsTests.Desk>
{
    private const string Igra = "#USM00072451 2026 06 21 00 2315    3 ncdc-nws ncdc-nws  377667  -999667\n";

    /// <summary>What is wrong, the content that is pasted, a word of the answer.</summary>
    public static TheoryData<string, string, string> Damaged => new()
    {
        { "nothing at all", "", "noch kein Aufstieg" },
        { "prose", "hello", "kein bekanntes Format" },
        { "a web page", "<html><body>soundings</body></html>", "Webseite" },
        { "a report for an ascent", "METAR EGXX 211150Z 24008KT 9999 FEW040 19/08 Q1018=", "Flugplatzmeldung" },
        { "a dropsonde", "XXAA 71067 99525 70014 08116 99017", "Fallsonde" },
        { "CSV without temperature", "pressure_hpa,dewpoint_c\n1000,10\n950,8\n", "keine Spalte für die Temperatur" },
        { "CSV without a place", "temperature_c,dewpoint_c\n15,10\n12,8\n", "keine Spalte für Druck oder Höhe" },
        { "CSV with text for a number", "pressure_hpa,temperature_c\n1000,warm\n950,12\n", "ist keine Zahl" },
        { "CSV with an open quotation mark", "pressure_hpa,temperature_c\n\"1000,15\n950,12\n", "keine Zahl" },
        { "CSV with decimal commas", "pressure_hpa,temperature_c\n1000,0,15,2\n950,0,12,1\n", "Semikolon" },
        { "CSV with an unknown unit", "pressure_furlong,temperature_c\n1000,15\n950,12\n", "die Einheit „furlong“" },
        { "CSV of few levels", "pressure_hpa,temperature_c\n1000,15\n950,12\n", "Stufen" },
        { "CSV with an impossible value", Csv("1000,15", "950,999", "900,8", "850,4", "800,1", "750,-2"), "eine Temperatur von 999 °C ist nicht möglich" },
        { "CSV that goes down again", Csv("1000,15", "950,12", "975,8", "850,4", "800,1", "750,-2"), "Boden" },
        { "CSV with a time without zone", "datetime,pressure_hpa,temperature_c\nnoon,1000,15\nnoon,950,12\n", "keine Zeit" },
        { "CSV with a bad comment", "# latitude: far\npressure_hpa,temperature_c\n1000,15\n950,12\n", "ist keine Zahl" },
        { "cut TEMP", "TTAA 71063 99001 99002 07826 30007 00134 0782", "abgeschnitten" },
        { "TEMP of a station without an ascent", "TTAA 71063 99001 NIL=", "NIL" },
        { "TEMP with winds only", "PPBB 71060 99001 90012 24010 25012 26015=", "Winde" },
        { "JSON that breaks off", "{\"levels\":[{\"pressureHpa\":1000,", "kein gültiges JSON" },
        { "JSON of another shape", "{\"levels\":7}", "levels" },
        { "JSON with a number for a level", "{\"levels\":[7,8,9]}", "hier gehört ein Objekt" },
        { "JSON with text for a number", "{\"levels\":[{\"pressureHpa\":\"high\",\"temperatureC\":1}]}", "hier gehört eine Zahl hin" },
        { "JSON with unknown names", "{\"levels\":[{\"x\":1000,\"y\":15},{\"x\":900,\"y\":9}]}", "nicht bekannt" },
        { "JSON with columns of different lengths", "{\"levels\":{\"pressureHpa\":[1000,900],\"temperatureC\":[15]}}", "" },
        { "JSON without profiles", "{\"profiles\":[]}", "leer" },
        { "JSON with a dew point above the temperature", Dew(), "Taupunkt" },
        { "IGRA with a shifted column", Igra + " 21     0  99800   300B   310B  650    45   180    30 \n", "IGRA" },
        { "IGRA with text for a number", Igra + "21     0  9x800   300B   310B  650    45   180    30 \n", "keine Zahl" },
    };

    /// <summary>Binary content as hexadecimal digits: octets of section 0 and what follows (WMO Manual on Codes, FM 94).</summary>
    public static TheoryData<string, string, string> Binary => new()
    {
        { "BUFR that is cut", "42554652001000040000160000", "abgeschnitten" },
        { "BUFR of an old edition", "4255465200001A02" + "00000000000000000000000000003737" + "3737", "BUFR-Ausgabe 2" },
        { "BUFR without its end", "4255465200001A04" + "0000000000000000000000000000000000000000", "7777" },
        { "a PDF", "255044462D312E37000A", "ein PDF" },
        { "GRIB", "47524942000000020000", "GRIB-Datei" },
        { "other bytes", "0001020304050607", "Binärdaten" },
    };

    public static TheoryData<string, string, string> Reports => new()
    {
        { "observation", "METAR EGXX 24008KT 9999 FEW040 19/08 Q1018=", "ohne Zeit" },
        { "observation", "METAR 211150Z 24008KT", "ohne Ortskennung" },
        { "observation", "fine weather", "kein METAR" },
        { "forecast", "TAF EGXX 24008KT 9999 FEW040=", "ohne Zeit" },
        { "forecast", "METAR EGXX 211150Z 24008KT 9999 FEW040 19/08 Q1018=", "keinen TAF" },
    };

    [Theory]
    [MemberData(nameof(Damaged))]
    public async Task An_ascent_that_cannot_be_used_is_refused_in_German(string what, string content, string word) =>
        Refused(what, word, await desk.SendAsync(new StringContent(content, Encoding.UTF8), fileName: null));

    [Theory]
    [MemberData(nameof(Binary))]
    public async Task A_file_that_cannot_be_used_is_refused_in_German(string what, string hex, string word) =>
        Refused(what, word, await desk.SendAsync(new ByteArrayContent(Convert.FromHexString(hex)), "a"));

    [Theory]
    [MemberData(nameof(Reports))]
    public async Task A_report_that_cannot_be_used_is_refused_in_German(string field, string report, string word) =>
        Refused(field, word, await desk.SendAsync(new StringContent(Demo.Text("broad-post-frontal.txt")), fileName: null, (field, report)));

    private static string Csv(params string[] rows) => "pressure_hpa,temperature_c\n" + string.Join('\n', rows) + "\n";

    private static string Dew() =>
        $"{{\"levels\":[{string.Join(',', Enumerable.Range(0, 8).Select(i => $"{{\"pressureHpa\":{1000 - (50 * i)},\"temperatureC\":{10 - i},\"dewPointC\":{15 - i}}}"))}]}}";

    private static void Refused(string what, string word, (HttpStatusCode Status, string Page) answer)
    {
        Assert.True(answer.Status == HttpStatusCode.UnprocessableEntity, $"{what}: {(int)answer.Status}");
        var errors = GermanText.Errors(answer.Page);
        Assert.NotEmpty(errors);
        Assert.Contains(errors, error => error.Contains(word, StringComparison.OrdinalIgnoreCase));
        Assert.Equal([], GermanText.EnglishIn(answer.Page));
    }

    /// <summary>An instructor at the desk, on a service of his own.</summary>
    public sealed class Desk : IAsyncLifetime
    {
        private readonly ServiceHost _host = new();
        private HttpClient _instructor = null!;
        private string _token = "";

        public async ValueTask InitializeAsync()
        {
            _instructor = (await _host.SignedInAsync(Role.Instructor, "Ada")).InGerman();
            var page = await _instructor.GetStringAsync("/briefs/new", TestContext.Current.CancellationToken);
            _token = page.Split("name=\"__RequestVerificationToken\" value=\"")[1].Split('"')[0];
        }

        public ValueTask DisposeAsync() => _host.DisposeAsync();

        internal async Task<(HttpStatusCode Status, string Page)> SendAsync(HttpContent ascent, string? fileName, params (string Name, string Value)[] more)
        {
            using var form = new MultipartFormDataContent();
            foreach (var (name, value) in more.Append(("site", _host.Get<SiteStore>().All()[0].Id!)).Append(("date", "2026-05-21")).Append(("__RequestVerificationToken", _token)))
                form.Add(new StringContent(value), name);
            if (fileName is null)
                form.Add(ascent, "text");
            else
                form.Add(ascent, "file", fileName);
            using var answer = await _instructor.PostAsync("/briefs", form, TestContext.Current.CancellationToken);
            return (answer.StatusCode, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        }
    }
}
