using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using DayBrief.Service.Features.People;

namespace DayBrief.Service.Features.Actuals;

/// <summary>What really happened, as programs and the launch point's page send it.</summary>
[Collection(OneService.Name)]
public sealed class ActualsTests : IAsyncDisposable
{
    private const string Day = "/api/v1/days/harrowmere/2026-06-12/actuals";
    private const string Page = "/fields/harrowmere/actuals?date=2026-06-12";
    private readonly ServiceHost _host = new();

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task An_entry_comes_back_at_the_fields_own_time_and_one_that_is_sent_twice_is_kept_once()
    {
        var client = _host.Client();
        object entry = new { id = "phone-0001", time = "13:30", topM = 1250.0, climbMs = 1.8, cloudBaseM = 1400, cloudOktas = 3, windFromDeg = 270, windKt = 12, by = "AB" };
        var first = await client.PostAsJsonAsync(Day, entry, Stopping);
        Assert.Equal(HttpStatusCode.Created, first.StatusCode);
        Assert.Equal(Day, first.Headers.Location!.ToString());
        await client.PostAsJsonAsync(Day, new { entries = new[] { entry, new { id = "phone-0002", kind = "first-thermal", time = "11:05" } } }, Stopping);
        var kept = (await client.GetFromJsonAsync<JsonElement>(Day, Stopping)).GetProperty("entries").EnumerateArray().ToArray();
        Assert.Equal(2, kept.Length);
        Assert.Equal("first-thermal", kept[0].GetProperty("kind").GetString());
        // British Summer Time, an hour ahead of UTC.
        Assert.Equal("2026-06-12T13:30:00+01:00", kept[1].GetProperty("time").GetString());
        Assert.Equal((1250, 1.8, 3), (kept[1].GetProperty("topM").GetDouble(), kept[1].GetProperty("climbMs").GetDouble(), kept[1].GetProperty("cloudOktas").GetInt32()));
        Assert.Equal(HttpStatusCode.NoContent, (await client.DeleteAsync($"{Day}/phone-0001", Stopping)).StatusCode);
        Assert.Equal(1, (await client.GetFromJsonAsync<JsonElement>(Day, Stopping)).GetProperty("entries").GetArrayLength());
    }

    [Theory]
    [InlineData("""{"time":"13:30"}""", "entries[0].topM")]
    [InlineData("""{"topM":1200}""", "entries[0].time")]
    [InlineData("""{"time":"2026-06-13T13:30","topM":1200}""", "entries[0].time")]
    [InlineData("""[{"time":"13:30","topM":1200},{"time":"14:00","climbMs":40}]""", "entries[1].climbMs")]
    [InlineData("""{"time":"13:30","cloudOktas":9}""", "entries[0].cloudOktas")]
    [InlineData("""{"time":"13:30","photo":"data:image/png;base64,AAAA"}""", "entries[0].photo")]
    [InlineData("""{"time":"13:30","topM":1,"kind":"tornado"}""", "entries[0].kind")]
    [InlineData("[]", "entries")]
    [InlineData("[null]", "entries[0]")]
    public async Task What_cannot_be_used_is_named_and_nothing_of_it_is_kept(string sent, string field)
    {
        var client = _host.Client();
        var problem = await (await client.PostAsync(Day, new StringContent(sent, Encoding.UTF8, "application/json"), Stopping)).ProblemAsync(HttpStatusCode.BadRequest);
        Assert.Equal(field, problem[0].GetProperty("field").GetString());
        Assert.Equal(0, (await client.GetFromJsonAsync<JsonElement>(Day, Stopping)).GetProperty("entries").GetArrayLength());
    }

    [Fact]
    public async Task The_table_that_verify_reads_is_taken_too()
    {
        var client = _host.Client();
        var sent = await client.PostAsync(Day, new StringContent("time,top_m,climb_ms,cloud_base_m\n12:00,900,1.2,\n15:30,1400,2.1,1500\n", Encoding.UTF8, "text/csv"), Stopping);
        Assert.Equal(HttpStatusCode.Created, sent.StatusCode);
        Assert.Equal([900, 1400], _host.Get<ActualStore>().Of("harrowmere", new(2026, 6, 12)).Select(entry => entry.TopM!.Value));
        await (await client.PostAsync(Day, new StringContent("when,top\n1,2\n", Encoding.UTF8, "text/csv"), Stopping)).ProblemAsync(HttpStatusCode.BadRequest);
        var nowhere = await client.PostAsync("/api/v1/days/nowhere/2026-06-12/actuals", new StringContent("{}", Encoding.UTF8, "application/json"), Stopping);
        Assert.Equal(HttpStatusCode.NotFound, nowhere.StatusCode);
    }

    /// <summary>ITU-T T.81: APP1 is where a camera writes place and time (Exif); the scan itself must stay byte for byte.</summary>
    [Fact]
    public async Task A_photo_is_kept_without_what_the_camera_wrote_beside_it()
    {
        var client = _host.Client();
        byte[] scan = [0xFF, 0xDA, 0, 4, 1, 2, 9, 8, 7, 0xFF, 0xD9];
        byte[] jpeg = [0xFF, 0xD8, 0xFF, 0xE1, 0, 8, .. "51.5 N"u8, 0xFF, 0xDB, 0, 3, 5, .. scan];
        await client.PostAsJsonAsync(Day, new { id = "photo-0001", time = "18:00", photo = $"data:image/jpeg;base64,{Convert.ToBase64String(jpeg)}" }, Stopping);
        var address = (await client.GetFromJsonAsync<JsonElement>(Day, Stopping)).GetProperty("entries")[0].GetProperty("photo").GetString()!;
        Assert.Equal([0xFF, 0xD8, 0xFF, 0xDB, 0, 3, 5, .. scan], await client.GetByteArrayAsync(address, Stopping));
        await client.DeleteAsync($"{Day}/photo-0001", Stopping);
        Assert.Equal(HttpStatusCode.NotFound, (await client.GetAsync(address, Stopping)).StatusCode);
    }

    [Fact]
    public async Task The_page_works_without_script_in_the_fields_units_and_keeps_what_is_refused()
    {
        var client = _host.Client();
        var kept = await client.SendFormAsync(Page, "/fields/harrowmere/actuals/2026-06-12", ("time", "14:10"), ("top", "4000"), ("climb", "3,5"), ("by", "AB"));
        Assert.Equal(Page, kept.Headers.Location!.ToString());
        var entry = Assert.Single(_host.Get<ActualStore>().Of("harrowmere", new(2026, 6, 12)));
        // 1 ft = 0.3048 m and 1 kt = 1852 m an hour, by definition.
        Assert.Equal(4000 * 0.3048, entry.TopM!.Value, 9);
        Assert.Equal(3.5 * 1852 / 3600, entry.ClimbMs!.Value, 9);
        Assert.Contains("top 4000 ft · climb 3.5 kt", WebUtility.HtmlDecode(await client.GetStringAsync(Page, Stopping)), StringComparison.Ordinal);
        var refused = await client.SendFormAsync(Page, "/fields/harrowmere/actuals/2026-06-12", ("time", "14:10"), ("top", "high"), ("note", "typed with care"));
        var page = await refused.TextAsync(HttpStatusCode.UnprocessableEntity);
        Assert.Contains("Top reached: \"high\" is not a number.", page, StringComparison.Ordinal);
        Assert.Contains("typed with care", page, StringComparison.Ordinal);
        await client.SendFormAsync(Page, "/fields/harrowmere/actuals/2026-06-12/remove", ("id", entry.Id));
        Assert.Empty(_host.Get<ActualStore>().Of("harrowmere", new(2026, 6, 12)));
    }

    [Fact]
    public async Task Whoever_is_signed_in_may_write_and_nobody_else()
    {
        var reader = await _host.SignedInAsync(Role.Reader);
        Assert.Equal(HttpStatusCode.Created, (await reader.PostAsJsonAsync(Day, new { time = "13:30", topM = 1200 }, Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await _host.Client().PostAsJsonAsync(Day, new { time = "13:30", topM = 1200 }, Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await _host.Client().GetAsync(Day, Stopping)).StatusCode);
        Assert.Contains("/sign-in", (await _host.Client().GetAsync(Page, Stopping)).Headers.Location!.ToString(), StringComparison.Ordinal);
    }

    public ValueTask DisposeAsync() => _host.DisposeAsync();
}
