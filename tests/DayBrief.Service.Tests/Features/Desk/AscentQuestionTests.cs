using System.Net;
using System.Text.Json;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Soundings;

namespace DayBrief.Service.Features.Desk;

/// <summary>What an ascent leaves open is asked, at the desk before anything is computed and of a program before it signs.</summary>
[Collection(OneService.Name)]
public sealed class AscentQuestionTests : IAsyncLifetime
{
    /// <summary>An invented morning without a time.</summary>
    private const string Timeless = "pressure_hpa,temperature_c,dew_point_c\n1000,8,5\n985,11,6\n950,9,4\n900,5,1\n850,1,-3\n800,-3,-7\n700,-10,-16\n600,-19,-27\n500,-29,-40\n";

    private readonly ServiceHost _host = new();
    private HttpClient _ada = null!;

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _ada = await _host.SignedInAsync(Role.Instructor, "Ada Invented");

    public ValueTask DisposeAsync() => _host.DisposeAsync();

    /// <summary>The case of the issue: an ascent of 18 UTC without its time gave a trigger of 07:55. An evening's ascent is of the day before.</summary>
    [Fact]
    public async Task An_ascent_without_a_time_is_asked_for_it_and_never_taken_as_sunrise()
    {
        var page = await (await SendAsync(("text", Timeless))).TextAsync(HttpStatusCode.UnprocessableEntity);
        Assert.Contains("The ascent does not say when it was made. Give its time, UTC", page);
        Assert.Contains("<div id=\"ascent-time\" class=\"asked\">", page);
        Assert.DoesNotContain("class=\"figures\"", page);
        var morning = await MadeAsync(("text", Timeless), ("ascentTime", "06Z"));
        Assert.Equal(new(2026, 5, 21, 6, 0, 0, TimeSpan.Zero), morning.Brief.AscentValidAt);
        Assert.Equal("instructor", AscentUsedJson.Of(morning).TimeFrom);
        var evening = await MadeAsync(("text", Timeless), ("ascentTime", "18:00"));
        Assert.Contains(evening.Brief.Day.Cautions, caution => caution.Code is "ascent-too-late" or "ascent-after-sunrise");
        Assert.Null(evening.Brief.Day.Times.TriggerTime);
    }

    /// <summary>FM 35 states day and hour: nobody is asked, and its hour counts.</summary>
    [Fact]
    public async Task The_hour_of_a_TEMP_message_is_known_and_not_asked_for()
    {
        var made = await MadeAsync(("text", Demo.Text("broad-post-frontal.txt")));
        Assert.NotNull(made.Brief.AscentValidAt);
        Assert.Equal("day-and-hour", AscentUsedJson.Of(made).TimeFrom);
    }

    [Fact]
    public async Task A_time_that_is_no_time_is_refused_at_its_field()
    {
        var page = await (await SendAsync(("text", Timeless), ("ascentTime", "dawn"))).TextAsync(HttpStatusCode.UnprocessableEntity);
        Assert.Contains("href=\"#ascentTime\"", page);
    }

    [Theory]
    [InlineData("6", 6, 0)]
    [InlineData("06", 6, 0)]
    [InlineData("0600", 6, 0)]
    [InlineData("06Z", 6, 0)]
    [InlineData("6:30", 6, 30)]
    [InlineData("12.15", 12, 15)]
    [InlineData("18 utc", 18, 0)]
    [InlineData("1145Z", 11, 45)]
    public void Hours_are_read_as_people_write_them(string text, int hour, int minute)
    {
        Assert.True(AscentClock.TryRead(text, out var time));
        Assert.Equal(new TimeOnly(hour, minute), time);
    }

    [Theory]
    [InlineData("25")]
    [InlineData("06:61")]
    [InlineData("noon")]
    [InlineData("-1")]
    public void What_is_no_hour_is_not_read(string text) => Assert.False(AscentClock.TryRead(text, out _));

    [Fact]
    public async Task A_value_that_hardly_occurs_is_asked_about_and_stands_at_the_headline_when_it_is_kept()
    {
        var wrong = Timeless.Replace("1000,8,5", "1000,48.6,5", StringComparison.Ordinal);
        var page = await (await SendAsync(("text", wrong), ("ascentTime", "06"))).TextAsync(HttpStatusCode.UnprocessableEntity);
        Assert.Contains("48.6 °C at the ground (1000 hPa) hardly occurs. Is it right?", page);
        Assert.Contains("<div id=\"ascent-asked\" class=\"asked\">", page);
        var made = await MadeAsync(("text", wrong), ("ascentTime", "06"), ("ascentConfirmed", "yes"));
        Assert.Equal(48.6, made.Brief.Ascent.Profile.SurfaceTemperature.Celsius, tolerance: 0.01);
        Assert.Contains(
            BriefBanners.Of(made, made.Inputs.PreparedAt, Reader.Of(made.Brief.Site)),
            banner => banner is { IsWarning: true } && banner.Text.Contains("48.6 °C", StringComparison.Ordinal) && banner.Text.Contains("it stands", StringComparison.Ordinal));
        Assert.True(AscentUsedJson.Of(made).Confirmed);
    }

    [Fact]
    public void What_was_left_out_of_the_ascent_stands_at_the_headline_and_in_the_list()
    {
        var text = Demo.Text("broad-post-frontal.txt");
        var group = text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)[8];
        var id = _host.Get<SoundingStore>().Keep(System.Text.Encoding.UTF8.GetBytes(text.Replace(group, "1X2#3", StringComparison.Ordinal)), "damaged");
        var inputs = _host.Get<BriefStore>().Find(DemonstrationDays.First)!.Inputs! with { SoundingId = id };
        var made = new MadeBrief(null, inputs, _host.Get<BriefDesk>().Computed(inputs));
        var reader = Reader.Of(made.Brief.Site);
        Assert.Contains(BriefBanners.Of(made, made.Inputs.PreparedAt, reader), banner => banner.IsWarning && banner.Text.StartsWith("Left out of the ascent", StringComparison.Ordinal));
        Assert.Contains(NotUsed.Of(made, reader), item => item.What == "of the ascent");
    }

    /// <summary>A program is not asked before it computes, but before anybody acts on it.</summary>
    [Fact]
    public async Task A_program_signs_nothing_whose_time_nobody_has_given()
    {
        _ada.DefaultRequestHeaders.Add("Accept", "application/json");
        var sounding = JsonDocument.Parse(await (await _ada.PostAsync("/api/v1/soundings", Demo.Plain(Timeless), Stopping)).Content.ReadAsStringAsync(Stopping)).RootElement.GetProperty("id").GetString();
        var made = await BriefAsync($$"""{"soundingId":"{{sounding}}","site":"harrowmere","date":"2026-05-21"}""");
        Assert.Equal(JsonValueKind.Null, made.GetProperty("brief").GetProperty("ascentUsed").GetProperty("timeFrom").ValueKind);
        var id = made.GetProperty("id").GetString()!;
        var refused = Assert.IsType<Infrastructure.InvalidInputException>(await Record.ExceptionAsync(() => _host.Get<Briefs.Revisions.Signing>().SignAsync(id, 1, new("ada", "Ada Invented"), null)));
        Assert.Equal("ascentValidAt", refused.Errors[0].Field);
        var timed = await BriefAsync($$"""{"soundingId":"{{sounding}}","site":"harrowmere","date":"2026-05-21","ascentValidAt":"2026-05-21T06:00:00Z"}""");
        Assert.NotNull((await _host.Get<Briefs.Revisions.Signing>().SignAsync(timed.GetProperty("id").GetString()!, 1, new("ada", "Ada Invented"), null)).Revision);
    }

    private async Task<JsonElement> BriefAsync(string json) =>
        JsonDocument.Parse(await (await _ada.PostAsync("/api/v1/briefs", Demo.Json(json), Stopping)).Content.ReadAsStringAsync(Stopping)).RootElement;

    private async Task<MadeBrief> MadeAsync(params (string Name, string Value)[] fields)
    {
        var made = await SendAsync(fields);
        Assert.Equal(HttpStatusCode.Redirect, made.StatusCode);
        return _host.Get<BriefDesk>().OfDraft(_host.Get<BriefStore>().Find(made.Headers.Location!.ToString().Split('/')[^1])!)!;
    }

    private Task<HttpResponseMessage> SendAsync(params (string Name, string Value)[] fields) => _ada.SendFormAsync(
        "/briefs/new", "/briefs", [("site", "harrowmere"), ("date", "2026-05-21"), ("groundWetness", "normal"), ("maxTemperatureC", "17"), .. fields]);
}
