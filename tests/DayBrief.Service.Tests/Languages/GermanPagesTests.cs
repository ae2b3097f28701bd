using System.Text.RegularExpressions;

namespace DayBrief.Service.Languages;

/// <summary>Every page and sheet of the demonstration is German where German is asked for, to the last word and comma.</summary>
/// <remarks>On a service of its own: what other tests keep on the shared one has English names of its own.</remarks>
[Collection(OneService.Name)]
public sealed partial class GermanPagesTests(GermanPagesTests.Untouched untouched) : IClassFixture<GermanPagesTests.Untouched>
{
    private static readonly string[] Days = ["demo-broad", "demo-short", "demo-spread", "demo-thunder", "demo-streets", "demo-stratus"];

    public static TheoryData<string> Pages =>
    [
        "/", "/briefs", "/desk", "/status", "/sign-in", "/briefs/no-such-brief",
        .. Days.SelectMany(day => new[] { $"/briefs/{day}", $"/briefs/{day}/sheet", $"/briefs/{day}/technique" }),
    ];

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task A_page_asked_for_in_German_has_no_English_left(string path) =>
        Assert.Empty(GermanText.EnglishIn(await GermanAsync(path)));

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Decimals_have_a_comma_and_dates_are_German(string path)
    {
        var text = GermanText.Visible(await GermanAsync(path));
        Assert.Equal([], DecimalPoint().Matches(text).Select(match => match.Value));
        Assert.Equal([], ThousandsComma().Matches(text).Select(match => match.Value));
        Assert.DoesNotContain("May 2026", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_date_stands_as_in_a_German_letter() =>
        Assert.Contains("Donnerstag, 21. Mai 2026", GermanText.Visible(await GermanAsync("/briefs/demo-broad")), StringComparison.Ordinal);

    [Theory]
    [InlineData("/briefs/demo-thunder/sheet")]
    public async Task Geometry_keeps_its_points_and_the_same_page_comes_again(string path)
    {
        var page = await GermanAsync(path);
        Assert.Equal([], Geometry().Matches(page).Select(match => match.Groups[1].Value).Where(value => CommaDecimal().IsMatch(value)));
        Assert.Equal(page, await GermanAsync(path));
    }

    private async Task<string> GermanAsync(string path)
    {
        using var client = untouched.Host.Client();
        using var request = new HttpRequestMessage(HttpMethod.Get, path);
        request.Headers.Add("Cookie", $"{Language.Cookie}=de");
        using var answer = await client.SendAsync(request, TestContext.Current.CancellationToken);
        return await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }

    [GeneratedRegex(@"(?<![\d.])\d+\.\d{1,2}(?![\d.])")]
    private static partial Regex DecimalPoint();

    [GeneratedRegex(@"\b\d{1,3},\d{3}\b")]
    private static partial Regex ThousandsComma();

    [GeneratedRegex(@"\s(?:d|x|y|cx|cy|r|points|viewBox)=""([^""]*)""")]
    private static partial Regex Geometry();

    [GeneratedRegex(@"\d,\d")]
    private static partial Regex CommaDecimal();

    public sealed class Untouched : IAsyncDisposable
    {
        internal ServiceHost Host { get; } = new();

        public ValueTask DisposeAsync() => Host.DisposeAsync();
    }
}
