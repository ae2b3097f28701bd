using System.Text.RegularExpressions;

namespace DayBrief.Service.Features.Phone;

[Collection(OneService.Name)]
public sealed partial class PageWeightTests(ServiceHost host)
{
    /// <summary>Issue 5, item 6: the page at most 60 kB compressed with its charts. Page, style sheet, script and worker as
    /// served with Brotli, technique loaded, on every demonstration day and in both languages; the fonts come once more on top.</summary>
    [Fact]
    public async Task A_page_with_its_charts_weighs_at_most_60_kB()
    {
        var shell = 0;
        var page = await (await host.Client().GetAsync("/", TestContext.Current.CancellationToken)).Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        foreach (Match file in Files().Matches(page))
            shell += await WeightAsync(file.Groups[1].Value);
        shell += await WeightAsync("/phone-worker.js");
        foreach (var day in new[] { "broad", "short", "spread", "thunder", "streets", "stratus" })
        {
            foreach (var language in new[] { "en", "de" })
            {
                var path = $"/briefs/demo-{day}?language={language}&experience=cross-country&glider=standard&instrument=usual";
                await LoadedAsync(path);
                var weight = await WeightAsync(path) + shell;
                TestContext.Current.TestOutputHelper?.WriteLine($"{day} {language}: {weight} bytes");
                Assert.True(weight <= 60_000, $"{path}: {weight} bytes");
            }
        }
    }

    [Fact]
    public async Task The_script_itself_is_under_6_kB()
    {
        var script = await host.Client().GetByteArrayAsync("/phone.js", TestContext.Current.CancellationToken);
        Assert.InRange(script.Length, 1, 6143);
    }

    private Task LoadedAsync(string path) => Eventually.TrueAsync(
        async () => !(await host.Client().GetStringAsync(path, TestContext.Current.CancellationToken)).Contains("data-working", StringComparison.Ordinal),
        () => "The technique has not been computed.",
        TestContext.Current.CancellationToken);

    private async Task<int> WeightAsync(string path)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, path);
        request.Headers.Add("Accept-Encoding", "br");
        using var answer = await host.Client().SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal("br", Assert.Single(answer.Content.Headers.ContentEncoding));
        return (await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)).Length;
    }

    [GeneratedRegex("(?:href|src)=\"(/[a-z.]+\\?v=[0-9a-f]+)\"")]
    private static partial Regex Files();
}
