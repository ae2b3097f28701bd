using System.Net;
using System.Text.RegularExpressions;

namespace DayBrief.Service;

/// <summary>Sends forms as a browser does: fetches the page, and sends its token with the fields.</summary>
internal static partial class Forms
{
    public static async Task<HttpResponseMessage> SendFormAsync(
        this HttpClient client, string page, string action, params (string Name, string Value)[] fields)
    {
        var token = Token().Match(await client.GetStringAsync(page, TestContext.Current.CancellationToken));
        Assert.True(token.Success, $"{page} has a form with a token");
        using var form = new FormUrlEncodedContent(
            [.. fields.Select(field => KeyValuePair.Create(field.Name, field.Value)), KeyValuePair.Create(token.Groups[1].Value, token.Groups[2].Value)]);
        return await client.PostAsync(action, form, TestContext.Current.CancellationToken);
    }

    public static async Task<string> TextAsync(this HttpResponseMessage answer, HttpStatusCode expected)
    {
        var text = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Assert.True(answer.StatusCode == expected, $"{(int)answer.StatusCode} instead of {(int)expected}: {text}");
        return text;
    }

    [GeneratedRegex("""name="(__RequestVerificationToken)" value="([^"]+)""")]
    private static partial Regex Token();
}
