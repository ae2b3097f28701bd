using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace DayBrief.Service.Features;

/// <summary>What the framework answers by itself: a page for people, in their language, and problem details for programs.</summary>
[Collection(OneService.Name)]
public sealed class ProblemPagesTests(ServiceHost host)
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public async Task An_unknown_address_is_answered_in_the_readers_language_with_a_way_on()
    {
        using var client = host.Client().InGerman();
        using var answer = await client.GetAsync("/nowhere/at/all", Stopping);
        var page = await answer.TextAsync(HttpStatusCode.NotFound);
        Assert.Contains("Unter dieser Adresse gibt es keine Seite.", page, StringComparison.Ordinal);
        Assert.Contains("href=\"/briefs\"", page, StringComparison.Ordinal);
        Assert.Equal([], GermanText.EnglishIn(page));
        Assert.True(answer.Headers.Contains("Content-Security-Policy"));
    }

    [Fact]
    public async Task A_form_sent_to_an_address_that_takes_none_is_told_so()
    {
        using var client = host.Client().InGerman();
        using var answer = await client.PostAsync("/offline", new StringContent(""), Stopping);
        var page = await answer.TextAsync(HttpStatusCode.MethodNotAllowed);
        Assert.Contains("So geht es nicht", page, StringComparison.Ordinal);
        Assert.Equal([], GermanText.EnglishIn(page));
    }

    [Fact]
    public async Task Too_large_an_ascent_is_told_in_German()
    {
        using var client = host.Client().InGerman();
        using var form = new MultipartFormDataContent { { new ByteArrayContent(new byte[11 * 1024 * 1024]), "text" } };
        using var answer = await client.PostAsync("/briefs", form, Stopping);
        var page = await answer.TextAsync(HttpStatusCode.BadRequest);
        Assert.Contains("Die Eingabe ist größer als 10 MB", page, StringComparison.Ordinal);
        Assert.Equal([], GermanText.EnglishIn(page));
        Assert.True(answer.Headers.Contains("Content-Security-Policy"), "also where what stood in the answer was cleared");
    }

    [Theory]
    [InlineData(400, "So nicht verwendbar")]
    [InlineData(405, "So geht es nicht")]
    [InlineData(413, "Zu groß")]
    [InlineData(415, "So nicht verwendbar")]
    [InlineData(429, "Zu viele Versuche")]
    [InlineData(500, "Hier ist etwas schiefgegangen")]
    [InlineData(503, "Jetzt nicht")]
    [InlineData(507, "Jetzt nicht")]
    public async Task Every_kind_of_failure_has_its_words(int status, string title)
    {
        var page = await WrittenAsync(status, "/somewhere", "text/html,*/*;q=0.8");
        Assert.Contains($"<h1>{title}</h1>", page, StringComparison.Ordinal);
        Assert.Contains("href=\"/briefs\"", page, StringComparison.Ordinal);
        Assert.Equal([], GermanText.EnglishIn(page));
    }

    [Theory]
    [InlineData("/api/v1/nowhere", "text/html,*/*;q=0.8")]
    [InlineData("/somewhere", "application/json")]
    [InlineData("/somewhere", "*/*")]
    public async Task Programs_get_problem_details(string path, string accept) =>
        Assert.Equal(500, JsonDocument.Parse(await WrittenAsync(500, path, accept)).RootElement.GetProperty("status").GetInt32());

    [Fact]
    public async Task Programs_find_the_field_beside_its_fault_and_before_it()
    {
        using var client = host.Client();
        using var answer = await client.PostAsJsonAsync("/api/v1/briefs", new { soundingId = "none" }, Stopping);
        var problem = await answer.Content.ReadFromJsonAsync<JsonElement>(Stopping);
        var error = problem.GetProperty("errors")[0];
        Assert.Equal("soundingId", error.GetProperty("field").GetString());
        Assert.DoesNotContain("soundingId", error.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.Equal($"soundingId: {error.GetProperty("detail").GetString()}", problem.GetProperty("detail").GetString());
    }

    /// <summary>What the framework's service for problem details makes of a failure.</summary>
    private async Task<string> WrittenAsync(int status, string path, string accept)
    {
        using var body = new MemoryStream();
        await using var scope = host.Get<IServiceProvider>().CreateAsyncScope();
        var context = new DefaultHttpContext { RequestServices = scope.ServiceProvider };
        (context.Request.Path, context.Request.Headers.Accept, context.Request.Headers.AcceptLanguage) = (path, accept, "de");
        (context.Request.Method, context.Request.Scheme, context.Request.Host) = ("GET", "http", new("localhost"));
        (context.Response.Body, context.Response.StatusCode) = (body, status);
        await host.Get<IProblemDetailsService>().WriteAsync(new() { HttpContext = context, ProblemDetails = { Status = status } });
        return System.Net.WebUtility.HtmlDecode(System.Text.Encoding.UTF8.GetString(body.ToArray()));
    }
}
