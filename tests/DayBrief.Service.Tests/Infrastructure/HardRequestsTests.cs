using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;

namespace DayBrief.Service.Infrastructure;

/// <summary>Requests that once gave a 500 or computed for ever: each has one answer that names the field.</summary>
[Collection(OneService.Name)]
public sealed class HardRequestsTests(ServiceHost host)
{
    private const string Site = """{"latitude":52,"longitude":-1,"elevationM":100,"timeZone":"Europe/London"}""";

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("\"ascentIndex\":-1", "ascentIndex")]
    [InlineData("\"ascentLatitude\":999,\"ascentLongitude\":0", "ascentLatitude")]
    [InlineData("\"ascentElevationM\":1e308", "ascentElevationM")]
    [InlineData("\"ascentElevationM\":-1e308", "ascentElevationM")]
    [InlineData("\"date\":\"0001-01-01\"", "date")]
    [InlineData("\"date\":\"9999-12-31\"", "date")]
    public async Task Each_has_its_answer(string member, string field)
    {
        using var client = host.Client();
        var sounding = await SoundingAsync(client);
        var date = member.StartsWith("\"date", StringComparison.Ordinal) ? "" : "\"date\":\"2026-05-21\",";
        await RefusedAsync(await PostAsync(client, $$"""{"soundingId":"{{sounding}}","site":{{Site}},{{date}}{{member}}}"""), field);
    }

    [Fact]
    public async Task A_text_of_megabytes_is_too_long()
    {
        using var client = host.Client();
        var sounding = await SoundingAsync(client);
        await RefusedAsync(
            await PostAsync(client, $$"""{"soundingId":"{{sounding}}","site":{{Site}},"date":"2026-05-21","preparedBy":"{{new string('x', 5_000_000)}}"}"""), "preparedBy");
    }

    [Fact]
    public async Task A_site_in_no_character_set_is_refused_by_its_field()
    {
        using var client = host.Client();
        var sounding = await SoundingAsync(client);
        byte[] body = [.. Encoding.UTF8.GetBytes($$"""{"soundingId":"{{sounding}}","date":"2026-05-21","site":{"name":"x"""), 0xFF, 0xFE, .. "\"}}"u8];
        using var content = new ByteArrayContent(body);
        content.Headers.ContentType = new("application/json");
        await RefusedAsync(await client.PostAsync("/api/v1/briefs", content, Stopping), null);
    }

    [Theory]
    [InlineData("--x\r\nContent-Disposition: form-data; name=\"text\"\r\n\r\nTTAA")]
    [InlineData("--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.txt\"\r\n\r\nTTAA 21")]
    [InlineData("--x\r\n")]
    [InlineData("")]
    public async Task A_form_that_breaks_off_is_refused(string body)
    {
        using var client = host.Client();
        using var content = new ByteArrayContent(Encoding.UTF8.GetBytes(body));
        content.Headers.TryAddWithoutValidation("Content-Type", "multipart/form-data; boundary=x");
        await RefusedAsync(await client.PostAsync("/api/v1/analyses", content, Stopping), null);
    }

    [Theory]
    [InlineData("x%0D%0ALOCATION%3Aelsewhere")]
    [InlineData("gr%C3%B6%C3%9Fe")]
    public async Task An_id_of_ones_own_brings_no_line_and_no_letter_that_a_header_cannot_carry(string id)
    {
        using var client = host.Client();
        using var form = new FormUrlEncodedContent([new("text", "x"), new("version", "0")]);
        var answer = await client.PostAsync($"/desk/{id}", form, Stopping);
        Assert.InRange((int)answer.StatusCode, 400, 499);
    }

    [Theory]
    [InlineData("/api/docs/index.html")]
    [InlineData("/api/v1/briefs/demo-broad")]
    [InlineData("/")]
    public async Task Every_page_and_the_pages_of_the_API_forbid_framing_and_other_hosts(string page)
    {
        using var client = host.Client();
        var answer = await client.GetAsync(page, Stopping);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("default-src 'self'", policy, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_note_of_nine_megabytes_is_refused_and_said_by_its_field()
    {
        using var client = host.Client();
        using var form = new FormUrlEncodedContent([new("instructorNote", new string('x', 9_000_000)), new("version", "0")]);
        var answer = await client.PostAsync("/briefs", form, Stopping);
        Assert.InRange((int)answer.StatusCode, 400, 499);
    }

    private static async Task RefusedAsync(HttpResponseMessage answer, string? field)
    {
        var text = await answer.Content.ReadAsStringAsync(Stopping);
        Assert.True((int)answer.StatusCode is >= 400 and < 500, $"{(int)answer.StatusCode}: {text}");
        var errors = JsonDocument.Parse(text).RootElement.GetProperty("errors").EnumerateArray().ToArray();
        Assert.NotEmpty(errors);
        if (field is not null)
            Assert.Contains(errors, error => error.TryGetProperty("field", out var named) && named.GetString() == field);
    }

    private static async Task<HttpResponseMessage> PostAsync(HttpClient client, string json)
    {
        using var content = new StringContent(json, Encoding.UTF8, "application/json");
        return await client.PostAsync("/api/v1/briefs", content, Stopping);
    }

    private static async Task<string> SoundingAsync(HttpClient client)
    {
        using var content = new StringContent(Demo.Text("broad-post-frontal.txt"), Encoding.UTF8, "text/plain");
        var answer = await client.PostAsync("/api/v1/soundings", content, Stopping);
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        return (await answer.Content.ReadFromJsonAsync<JsonElement>(Stopping)).GetProperty("id").GetString()!;
    }
}
