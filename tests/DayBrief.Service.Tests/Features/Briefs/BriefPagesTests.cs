using System.Net;
using UglyToad.PdfPig;

namespace DayBrief.Service.Features.Briefs;

[Collection(OneService.Name)]
public sealed class BriefPagesTests(ServiceHost host)
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_new_install_shows_the_finished_demonstration_and_says_that_it_is_invented()
    {
        await using var fresh = new ServiceHost();
        var page = WebUtility.HtmlDecode(await fresh.Client().GetStringAsync("/", Stopping));
        Assert.Contains("Harrowmere (invented)", page);
        Assert.Contains("Demonstration: field, ascent and day are invented.", page);
        Assert.Contains("Broad thermals", page);
        Assert.Contains("Advice only.", page);
    }

    [Fact]
    public async Task Every_page_asks_no_other_host_for_anything()
    {
        foreach (var path in new[] { "/", "/briefs", "/briefs/new", "/briefs/demo-short", "/briefs/demo-short/sheet" })
        {
            var page = await GetAsync(path);
            Assert.DoesNotContain("src=\"http", page, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("href=\"http", page, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotMatch("(?i)<script(?! src=\"/[a-z])", page);
        }
    }

    [Fact]
    public async Task A_day_without_thermals_says_so_and_gives_no_technique()
    {
        var page = await GetAsync("/briefs/demo-stratus");
        Assert.Contains("No usable thermals", page);
        Assert.DoesNotContain("How to fly it", page);
    }

    [Fact]
    public async Task The_reader_chooses_the_units()
    {
        Assert.Contains(" ft</span>", await GetAsync("/briefs/demo-broad"));
        var metric = await GetAsync("/briefs/demo-broad?units=metric");
        Assert.Contains(" m</span>", metric);
        Assert.DoesNotContain(" ft</span>", metric);
    }

    /// <summary>A4 is 210 × 297 mm, 595.3 × 841.9 points.</summary>
    [Theory]
    [InlineData("demo-broad")]
    [InlineData("demo-streets")]
    [InlineData("demo-stratus")]
    public async Task The_sheet_is_one_A4_page_with_selectable_text_and_embedded_fonts(string id)
    {
        var answer = await host.Client().GetAsync($"/briefs/{id}/sheet.pdf", Stopping);
        Assert.Equal("application/pdf", answer.Content.Headers.ContentType?.MediaType);
        using var pdf = PdfDocument.Open(await answer.Content.ReadAsByteArrayAsync(Stopping));
        var page = Assert.Single(pdf.GetPages());
        Assert.Equal(595.3, page.Width, tolerance: 0.5);
        Assert.Equal(841.9, page.Height, tolerance: 0.5);
        Assert.Contains("Harrowmere", page.Text);
        Assert.Contains("Demonstration", page.Text);
        Assert.All(page.Letters, letter => Assert.Contains("SourceSans3", letter.FontName!.Replace("-", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal)));
        Assert.All(page.Letters, letter => Assert.InRange(letter.Location.Y, 0, 842));
        Assert.Contains(page.Letters, letter => letter.PointSize >= 28);
    }

    [Fact]
    public async Task Sheet_page_and_PDF_say_the_same()
    {
        var page = await GetAsync("/briefs/demo-short/sheet");
        using var pdf = PdfDocument.Open(await host.Client().GetByteArrayAsync("/briefs/demo-short/sheet.pdf", Stopping));
        foreach (var word in new[] { "Trigger", "Usable top", "Climb", "Last thermal", "Other cautions" })
        {
            Assert.Contains(word, page);
            Assert.Contains(word.Split(' ')[0], pdf.GetPage(1).Text);
        }
    }

    [Fact]
    public async Task A_refused_ascent_leaves_the_typed_text_in_the_form_beside_the_error()
    {
        using var form = Form("TTAA 71063 99001 nonsense");
        var answer = await host.Client().PostAsync("/briefs", form, Stopping);
        var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(Stopping));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("TTAA 71063 99001 nonsense</textarea>", page);
        Assert.Contains("role=\"alert\"", page);
        Assert.Contains("class=\"error\"", page);
    }

    /// <summary>Five megabytes pasted: more than any ascent, and one clear answer.</summary>
    [Fact]
    public async Task Five_megabytes_of_pasted_prose_get_one_answer()
    {
        using var form = Form(new string('x', 5_000_000));
        var answer = await host.Client().PostAsync("/briefs", form, Stopping);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("role=\"alert\"", await answer.Content.ReadAsStringAsync(Stopping));
    }

    [Fact]
    public async Task A_pasted_ascent_becomes_a_brief()
    {
        using var form = Form(Demo.Text("anticyclone-short-dry.csv"));
        var answer = await host.Client().PostAsync("/briefs", form, Stopping);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Contains("Not for today", await GetAsync(answer.Headers.Location!.ToString()));
    }

    [Fact]
    public async Task An_observation_corrects_the_lowest_layer_and_is_shown()
    {
        using var form = Form(Demo.Text("anticyclone-short-dry.csv"));
        form.Add(new StringContent("METAR ZZZZ 240520Z 06016G28KT 9999 FEW030 14/06 Q1029="), "observation");
        form.Add(new StringContent("TAF ZZZZ 240500Z 2406/2415 06012KT 9999 FEW035 PROB30 TEMPO 2413/2415 TSRA BKN030CB="), "forecast");
        var answer = await host.Client().PostAsync("/briefs", form, Stopping);
        var page = await GetAsync(answer.Headers.Location!.ToString());
        Assert.Contains("ZZZZ 05:20 UTC", page);
        Assert.Contains("The lowest layer is corrected to the observation at the surface (+2.6 °C against the ascent).", page);
        Assert.Contains("28 kt reported at ZZZZ", page);
        Assert.Contains("14:00–16:00: forecast for ZZZZ (PROB30 TEMPO 2413/2415 TSRA BKN030CB); be down before it.", WebUtility.HtmlDecode(page));
    }

    [Fact]
    public async Task A_report_that_is_none_is_refused_beside_its_field()
    {
        using var form = Form(Demo.Text("anticyclone-short-dry.csv"));
        form.Add(new StringContent("nice weather"), "observation");
        var answer = await host.Client().PostAsync("/briefs", form, Stopping);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("name=\"observation\" value=\"nice weather\" aria-invalid=\"true\"", await answer.Content.ReadAsStringAsync(Stopping));
    }

    /// <summary>Two invented ascents to the columns of IGRA version 2, a day apart.</summary>
    [Fact]
    public async Task Of_several_ascents_in_one_input_the_instructor_chooses()
    {
        var text = Igra(23, 140) + Igra(24, 120);
        using var first = Form(text);
        var offer = await host.Client().PostAsync("/briefs", first, Stopping);
        var page = WebUtility.HtmlDecode(await offer.Content.ReadAsStringAsync(Stopping));
        Assert.Contains("The input holds 2 ascents.", page);
        using var second = Form(text);
        second.Add(new StringContent("1"), "ascentIndex");
        var made = await host.Client().PostAsync("/briefs", second, Stopping);
        Assert.Contains("Wed 24 Jun 2026", await GetAsync(made.Headers.Location!.ToString()));
    }

    private static string Igra(int day, int surfaceTenths)
    {
        (int Pa, int Fall)[] levels = [(101400, 0), (98600, 20), (92500, 60), (85000, 110), (70000, 190), (50000, 370)];
        var lines = levels.Select((level, i) =>
            $"2{(i == 0 ? 1 : 0)} -9999 {level.Pa,6} -9999 {surfaceTenths - level.Fall,5} -9999    40   270    50");
        return $"#ZZM00099001 2026 06 {day:00} 06 0500 {levels.Length,4} invented invented  523100   -19200\n{string.Join('\n', lines)}\n";
    }

    private static MultipartFormDataContent Form(string text) => new()
    {
        { new StringContent(text), "text" },
        { new StringContent("harrowmere"), "site" },
        { new StringContent("2026-06-24"), "date" },
        { new StringContent("25"), "maxTemperatureC" },
        { new StringContent("a test"), "preparedBy" },
    };

    private async Task<string> GetAsync(string path)
    {
        var answer = await host.Client().GetAsync(path, Stopping);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(Stopping));
    }
}
