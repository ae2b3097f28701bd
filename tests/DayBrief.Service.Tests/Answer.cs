using System.Net;
using System.Text.Json;

namespace DayBrief.Service;

/// <summary>Reads answers of the service.</summary>
internal static class Answer
{
    public static async Task<JsonElement> JsonAsync(this HttpResponseMessage answer, HttpStatusCode expected)
    {
        var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(answer.StatusCode == expected, $"{(int)answer.StatusCode} instead of {(int)expected}: {text}");
        return JsonDocument.Parse(text).RootElement;
    }

    /// <summary>Problem details with at least one error, each of which says something.</summary>
    public static async Task<JsonElement> ProblemAsync(this HttpResponseMessage answer, HttpStatusCode expected)
    {
        var problem = await answer.JsonAsync(expected);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        Assert.Equal((int)expected, problem.GetProperty("status").GetInt32());
        Assert.All(problem.GetProperty("errors").EnumerateArray(), error => Assert.NotEmpty(error.GetProperty("detail").GetString()!));
        return problem.GetProperty("errors");
    }
}
