using System.Globalization;
using System.Net;
using System.Text.Json;

namespace DayBrief.Service.Features.Briefs;

[Collection(OneService.Name)]
public sealed class BriefRoutesTests(ServiceHost host)
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_brief_is_made_from_a_kept_ascent_and_given_back()
    {
        var client = host.Client();
        var id = await SoundingAsync(client, "broad-post-frontal.txt");
        var made = await client.PostAsync("/api/v1/briefs", Demo.Json($$"""
            { "soundingId": "{{id}}", "site": {{Demo.Site}}, "date": "2026-05-21", "preparedBy": "a test",
              "assumptions": { "maxTemperatureC": 17, "cloudOktas": 1, "ensemble": 50 } }
            """), Stopping);
        var answer = await made.JsonAsync(HttpStatusCode.Created);
        var back = await (await client.GetAsync(made.Headers.Location, Stopping)).JsonAsync(HttpStatusCode.OK);
        // how to fly it is computed meanwhile
        static IEnumerable<string> AllBut(JsonElement brief) => brief.EnumerateObject().Where(field => field.Name != "technique").Select(field => field.ToString());
        Assert.Equal(AllBut(answer.GetProperty("brief")), AllBut(back));
        Assert.Equal(15, back.GetProperty("technique").GetProperty("groups").GetArrayLength());
        Assert.Equal("2026-05-21", back.GetProperty("date").GetString());
        Assert.Equal(17, back.GetProperty("day").GetProperty("assumptions").GetProperty("maxTemperatureC").GetDouble());
    }

    /// <summary>Every name that the outside contract gives the day, at the place it gives it.</summary>
    [Fact]
    public async Task The_day_has_every_field_of_the_contract()
    {
        var day = (await (await host.Client().GetAsync("/api/v1/briefs/demo-broad", Stopping)).JsonAsync(HttpStatusCode.OK)).GetProperty("day");
        foreach (var name in new[] { "site", "date", "assumptions", "sunrise", "sunset", "steps", "trigger", "firstUsable", "best", "last", "maxDepthM", "maxClimbMs", "thermalType", "ranges", "cautions" })
            Assert.True(day.TryGetProperty(name, out _), name);
        foreach (var name in new[] { "time", "surfaceTemperatureC", "sensibleHeatWm2", "latentHeatWm2", "mixedLayerDepthM", "mixedLayerThetaK", "mixedLayerMixingRatioGkg", "convectiveVelocityScaleMs", "condensationLevelAglM", "cloudBaseAglM", "cloudTopAglM", "cloudCoverOktas", "thermalTopAglM", "usableTopAglM", "coreUpdraftMs", "climbMs", "thermalRadiusM", "spacingM" })
            Assert.True(day.GetProperty("steps")[0].TryGetProperty(name, out _), name);
        foreach (var name in new[] { "triggerTime", "maxDepthM", "maxClimbMs" })
            Assert.True(day.GetProperty("ranges").GetProperty(name).TryGetProperty("p50", out _), name);
        Assert.Equal(5, (Time(day, 1) - Time(day, 0)).TotalMinutes);
    }

    [Theory]
    [InlineData("""{"site":"harrowmere","date":"2026-05-21"}""", "soundingId")]
    [InlineData("""{"soundingId":"SOUNDING","date":"2026-05-21"}""", "site")]
    [InlineData("""{"soundingId":"SOUNDING","site":"nowhere","date":"2026-05-21"}""", "site")]
    [InlineData("""{"soundingId":"SOUNDING","site":{"latitude":52,"longitude":400,"elevationM":118,"timeZone":"Europe/London"},"date":"2026-05-21"}""", "site.longitude")]
    [InlineData("""{"soundingId":"SOUNDING","site":{"latitude":52,"longitude":0,"elevationM":118,"timeZone":"Nowhere/None"},"date":"2026-05-21"}""", "site.timeZone")]
    [InlineData("""{"soundingId":"SOUNDING","site":"harrowmere","date":"2026-05-21","assumptions":{"cloudOktas":9}}""", "assumptions.cloudOktas")]
    public async Task What_is_wrong_is_named_by_its_field(string request, string field)
    {
        var client = host.Client();
        var id = await SoundingAsync(client, "broad-post-frontal.txt");
        var answer = await client.PostAsync("/api/v1/briefs", Demo.Json(request.Replace("SOUNDING", id, StringComparison.Ordinal)), Stopping);
        var errors = await answer.ProblemAsync(HttpStatusCode.BadRequest);
        Assert.Contains(errors.EnumerateArray(), error => error.GetProperty("field").GetString() == field);
    }

    [Theory]
    [InlineData("not json")]
    [InlineData("""{"soundingId":"x","date":"yesterday"}""")]
    [InlineData("""{"soundingId":"x","assumptions":{"maxTemperatureC":"warm"}}""")]
    public async Task A_request_of_the_wrong_shape_is_refused_with_the_place(string request)
    {
        var errors = await (await host.Client().PostAsync("/api/v1/briefs", Demo.Json(request), Stopping)).ProblemAsync(HttpStatusCode.BadRequest);
        Assert.NotEmpty(errors.EnumerateArray());
    }

    [Fact]
    public async Task An_unknown_brief_is_not_found_as_page_and_as_JSON()
    {
        Assert.Equal(HttpStatusCode.NotFound, (await host.Client().GetAsync("/api/v1/briefs/none", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await host.Client().GetAsync("/briefs/none", Stopping)).StatusCode);
    }

    [Fact]
    public async Task The_API_is_described_and_can_be_tried()
    {
        var description = await (await host.Client().GetAsync("/api/openapi.json", Stopping)).JsonAsync(HttpStatusCode.OK);
        foreach (var path in new[] { "/api/v1/soundings", "/api/v1/analyses", "/api/v1/briefs", "/api/v1/briefs/{id}" })
            Assert.True(description.GetProperty("paths").TryGetProperty(path, out _), path);
        Assert.Equal(HttpStatusCode.OK, (await host.Client().GetAsync("/api/docs/index.html", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await host.Client().GetAsync("/health/live", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await host.Client().GetAsync("/health/ready", Stopping)).StatusCode);
    }

    private static DateTimeOffset Time(JsonElement day, int step) =>
        DateTimeOffset.Parse(day.GetProperty("steps")[step].GetProperty("time").GetString()!, CultureInfo.InvariantCulture);

    private static async Task<string> SoundingAsync(HttpClient client, string demo) =>
        (await (await client.PostAsync("/api/v1/soundings", Demo.Plain(Demo.Text(demo)), Stopping)).JsonAsync(HttpStatusCode.Created))
            .GetProperty("id").GetString()!;
}
