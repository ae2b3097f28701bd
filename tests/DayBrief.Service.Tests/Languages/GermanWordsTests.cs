using System.Net;
using DayBrief.Service.Features.Briefs;

namespace DayBrief.Service.Languages;

/// <summary>Words that no German-speaking glider pilot would use do not stand in the German texts.</summary>
[Collection(OneService.Name)]
public sealed class GermanWordsTests(ServiceHost host)
{
    private static readonly string[] Wrong = ["Fallböe", "Großräumig", "Auslösung", "meist ", "Vorbereitet von", "Wie das Telefon"];

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    [Fact]
    public void None_of_them_is_left()
    {
        var german = TextFile.All.Single(file => file.ToString() == "Texts.de.resx");
        Assert.DoesNotContain(german.Entries, entry => Wrong.Any(word => entry.Value.Contains(word, StringComparison.Ordinal)));
    }

    /// <summary>A German field read by a browser that asks for English: the page is the field's, and so is all of the masthead.</summary>
    [Fact]
    public async Task Signing_in_and_out_speaks_the_language_of_the_page()
    {
        var invented = host.Get<BriefStore>().Find(DemonstrationDays.First)!.Inputs!;
        var id = host.Get<BriefDesk>().Make(invented with { Demonstration = false, Site = invented.Site with { Language = "de" } }).Id!;
        using var request = new HttpRequestMessage(HttpMethod.Get, $"/briefs/{id}");
        request.Headers.Add("Accept-Language", "en");
        var page = WebUtility.HtmlDecode(await (await host.Client().SendAsync(request, Stopping)).Content.ReadAsStringAsync(Stopping));
        Assert.Contains("<html lang=\"de\"", page, StringComparison.Ordinal);
        Assert.Contains(">Anmelden<", page, StringComparison.Ordinal);
        Assert.DoesNotContain(">Sign in<", page, StringComparison.Ordinal);
    }
}
