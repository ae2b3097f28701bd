using System.Net;
using System.Text;
using DayBrief.House;

namespace DayBrief.Service.Features.Soundings;

[Collection(OneService.Name)]
public sealed class SoundingRoutesTests(ServiceHost host)
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    /// <summary>Jackson, 22 September 2006: the LCL that a general-purpose library gives is 976.837 hPa (reference data).</summary>
    [Fact]
    public async Task A_real_message_is_analysed_and_nothing_is_kept()
    {
        var text = await File.ReadAllTextAsync(Repository.Shared("soundings", "original", "fm35_jackson_20060922_12z.txt"), Stopping);
        var analysis = await (await host.Client().PostAsync("/api/v1/analyses?surfaceTemperature=30.4", Text(text), Stopping)).JsonAsync(HttpStatusCode.OK);
        Assert.Equal("72235", analysis.GetProperty("source").GetProperty("station").GetString());
        Assert.Equal(976.837, analysis.GetProperty("surfaceParcel").GetProperty("lclPressureHpa").GetDouble(), 0.5);
        Assert.Equal(873.8, analysis.GetProperty("dryTops")[0].GetProperty("topPressureHpa").GetDouble(), 5.0);
    }

    [Fact]
    public async Task A_kept_ascent_is_given_back_at_its_location()
    {
        var client = host.Client();
        var made = await client.PostAsync("/api/v1/soundings", Text(Demo("anticyclone-short-dry.csv")), Stopping);
        var id = (await made.JsonAsync(HttpStatusCode.Created)).GetProperty("id").GetString();
        var back = await (await client.GetAsync(made.Headers.Location, Stopping)).JsonAsync(HttpStatusCode.OK);
        Assert.Equal(id, back.GetProperty("id").GetString());
        Assert.Equal(10, back.GetProperty("analysis").GetProperty("levels").GetArrayLength());
    }

    [Fact]
    public async Task An_uploaded_file_is_read_by_its_content()
    {
        using var form = new MultipartFormDataContent { { Text(Demo("spreading-out.csv")), "file", "misnamed.bufr" } };
        var analysis = await (await host.Client().PostAsync("/api/v1/analyses", form, Stopping)).JsonAsync(HttpStatusCode.OK);
        Assert.Equal("CSV", analysis.GetProperty("source").GetProperty("format").GetString());
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("pressure_hpa,temperature_c,dew_point_c\n1000,10,15\n950,8,13\n900,6,11\n850,4,9\n800,2,7\n750,0,5\n", "dew point above temperature")]
    [InlineData("TTAA 71063 99001 99002 078", "truncated message")]
    public async Task Bad_input_gets_problem_details_that_name_the_place(string text, string why)
    {
        var errors = await (await host.Client().PostAsync("/api/v1/analyses", Text(text), Stopping)).ProblemAsync(HttpStatusCode.UnprocessableEntity);
        Assert.True(errors.GetArrayLength() >= 1, why);
    }

    [Fact]
    public async Task Binary_rubbish_is_refused()
    {
        var bytes = new byte[4096];
        new Random(1).NextBytes(bytes);
        using var content = new ByteArrayContent(bytes);
        await (await host.Client().PostAsync("/api/v1/analyses", content, Stopping)).ProblemAsync(HttpStatusCode.UnprocessableEntity);
    }

    [Fact]
    public async Task An_input_over_the_limit_is_refused_before_it_is_parsed()
    {
        using var content = new ByteArrayContent(new byte[(10 * 1024 * 1024) + 1]);
        await (await host.Client().PostAsync("/api/v1/analyses", content, Stopping)).ProblemAsync(HttpStatusCode.BadRequest);
    }

    [Fact]
    public async Task An_impossible_surface_temperature_is_refused_by_name()
    {
        var errors = await (await host.Client().PostAsync("/api/v1/analyses?surfaceTemperature=NaN", Text("x"), Stopping)).ProblemAsync(HttpStatusCode.BadRequest);
        Assert.Equal("surfaceTemperature", errors[0].GetProperty("field").GetString());
    }

    [Fact]
    public async Task An_unknown_id_is_not_found() =>
        Assert.Equal(HttpStatusCode.NotFound, (await host.Client().GetAsync("/api/v1/soundings/none", Stopping)).StatusCode);

    private static string Demo(string name) => File.ReadAllText(Path.Combine(Repository.Root, "soundings", name));

    private static StringContent Text(string text) => new(text, Encoding.UTF8, "text/plain");
}
