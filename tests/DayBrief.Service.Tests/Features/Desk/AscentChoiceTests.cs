using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.People;

namespace DayBrief.Service.Features.Desk;

/// <summary>The ascent that is meant is the one that is computed: each way to give one, after each other, as an instructor at 07:30
/// does it. Expected temperatures are those that the ascents themselves state at their lowest level.</summary>
[Collection(OneService.Name)]
public sealed partial class AscentChoiceTests : IAsyncLifetime
{
    /// <summary>The lowest levels of the two invented ascents of 21 May and 24 June (soundings/README.md).</summary>
    private const string Pasted = "broad-post-frontal.txt";

    private const string File = "anticyclone-short-dry.csv";

    private readonly ServiceHost _host = new();
    private HttpClient _ada = null!;
    private string _desk = "";
    private Dictionary<string, string> _fields = [];

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    private Draft Draft => _host.Get<BriefStore>().Find(_desk.Split('/')[^1])!;

    public async ValueTask InitializeAsync() => _ada = await _host.SignedInAsync(Role.Instructor, "Ada Invented");

    public ValueTask DisposeAsync() => _host.DisposeAsync();

    /// <summary>The case of the issue: text, then a file, then a maximum typed was computed from the text again.</summary>
    [Fact]
    public async Task A_file_given_after_a_text_stays_in_use_when_a_maximum_is_typed()
    {
        await SendAsync(("text", Demo.Text(Pasted)));
        Assert.Equal("99001", Station);
        var page = await SendFileAsync(File);
        Assert.Contains("Now in use, because it was given last: Station Stonefold", page);
        Assert.Equal(Demo.Text(Pasted).ReplaceLineEndings("\n"), Draft.Fields!["text"]);
        await SendAsync(("maxTemperatureC", "23"));
        Assert.StartsWith("Stonefold", Station, StringComparison.Ordinal);
        Assert.Equal(23, Draft.Inputs!.Assumptions.MaxTemperatureC);
    }

    /// <summary>Also of the issue: what was picked did nothing while text was pasted, and typed levels were ignored.</summary>
    [Fact]
    public async Task What_is_picked_among_those_at_hand_is_used_whatever_else_stands_in_the_fields()
    {
        await SendAsync(("text", Demo.Text(Pasted)));
        await SendFileAsync(File);
        var page = await SendAsync(("kept", AscentGiving.Text));
        Assert.Contains("Now in use, as chosen: Station 99001", page);
        Assert.Equal("99001", Station);
        await SendAsync(("kept", Draft.Fields!["given"]));
        Assert.StartsWith("Stonefold", Station, StringComparison.Ordinal);
        page = await SendAsync([.. Typed(), ("station", "Typed by Ada"), ("ascentDate", "2026-05-21"), ("ascentTime", "06")]);
        Assert.Contains("Now in use, because it was given last: Station Typed by Ada", page);
        Assert.Equal("Typed by Ada", Station);
        await SendAsync(("text", Demo.Text(Pasted).Replace("99001", "99002", StringComparison.Ordinal)));
        Assert.Equal("99002", Station);
    }

    [Fact]
    public async Task The_ones_at_hand_are_named_by_station_time_age_format_and_levels_each_once_and_never_by_a_hash()
    {
        await SendAsync(("text", Demo.Text(Pasted)));
        await SendFileAsync(Pasted); // the same once more, as a file
        var page = await SendFileAsync(File);
        var choices = Choice().Matches(page).Select(match => match.Groups[1].Value).ToArray();
        Assert.Single(choices, words => words.Contains("Station 99001", StringComparison.Ordinal));
        Assert.Single(choices, words => Regex.IsMatch(words, "Station Stonefold .invented., Wed 24 Jun 2026 05:00 UTC, .*06:00 of the day, CSV, [0-9]+ levels"));
        Assert.All(choices, words => Assert.DoesNotMatch("[0-9a-f]{16}", words));
    }

    /// <summary>While a text is mended in its field each step is kept; the steps are no ascents to choose from.</summary>
    [Fact]
    public async Task A_text_mended_in_its_field_stands_once_and_what_a_program_sent_stands_beside_it()
    {
        await SendAsync(("text", Demo.Text(Pasted)));
        await _ada.PostAsync("/api/v1/soundings?name=sent.json", Demo.Plain(Demo.Text("strong-wind-streets.json").Replace("\"Stonefold", "\"Elsewhere", StringComparison.Ordinal)), Stopping);
        var page = await SendAsync(("text", Demo.Text(Pasted) + "\n "));
        var choices = Choice().Matches(page).Select(match => match.Groups[1].Value).ToArray();
        Assert.Single(choices, words => words.Contains("Station 99001", StringComparison.Ordinal));
        Assert.Single(choices, words => words.Contains("sent.json", StringComparison.Ordinal));
    }

    [Fact]
    public async Task When_the_text_in_use_is_taken_away_nothing_takes_its_place_in_silence()
    {
        await SendFileAsync(File);
        await SendAsync(("text", Demo.Text(Pasted)));
        var page = await SendAsync(HttpStatusCode.UnprocessableEntity, [("text", "")]);
        Assert.Contains("None of the ascents at hand is chosen.", page);
        Assert.Null(Draft.Inputs);
    }

    [Fact]
    public async Task A_file_that_cannot_be_read_is_told_and_changes_neither_text_nor_choice()
    {
        await SendAsync(("text", Demo.Text(Pasted)));
        var page = await SendAsync(HttpStatusCode.UnprocessableEntity, [], ("holiday.txt", "Dear all, it rains."u8.ToArray()));
        Assert.Contains("holiday.txt: this file could not be read as an ascent and is not used.", page);
        Assert.Equal(Demo.Text(Pasted).ReplaceLineEndings("\n"), Draft.Fields!["text"]);
        await SendAsync(("maxTemperatureC", "16"));
        Assert.Equal("99001", Station);
        Assert.Contains(NotUsed(), item => item.What.StartsWith("holiday.txt", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Before_the_signature_stands_what_was_given_and_is_not_used_and_the_record_has_it()
    {
        await SendAsync(
            ("text", Demo.Text(Pasted)), ("cloudOktas", "2"), ("cloudFrom0", "13:00"), ("cloudOktas0", "5"),
            ("observation", "METAR ZZZZ 211620Z 24006KT 9999 FEW030 16/06 Q1021="));
        var page = await SendFileAsync("spreading-out.csv");
        foreach (var words in new[] { "the pasted text, Station 99001", "another ascent is chosen", "2 oktas of cloud for the whole day", "METAR ZZZZ 16:20 UTC", "more than 90 minutes from the ascent" })
            Assert.Contains(words, page);
        await _ada.SendFormAsync(_desk, $"{_desk}/sign", ("version", $"{Draft.Version}"));
        var brief = await BriefAsync();
        Assert.StartsWith("Stonefold", brief.GetProperty("ascentUsed").GetProperty("station").GetString(), StringComparison.Ordinal);
        Assert.Equal("ascent", brief.GetProperty("ascentUsed").GetProperty("timeFrom").GetString());
        Assert.Equal(3, brief.GetProperty("notUsed").GetArrayLength());
    }

    private string? Station => _host.Get<BriefDesk>().OfDraft(Draft)?.Brief.Ascent.Sounding.Source.Station;

    private IReadOnlyList<Unused> NotUsed() =>
        [.. Briefs.NotUsed.Of(_host.Get<BriefDesk>().OfDraft(Draft)!, Reader.Of(Draft.Inputs!.Site.ToSite()))];

    private async Task<JsonElement> BriefAsync() =>
        JsonDocument.Parse(await _ada.GetStringAsync($"/api/v1/briefs/{Draft.Id}", Stopping)).RootElement;

    /// <summary>Six levels of an invented morning.</summary>
    private static (string Name, string Value)[] Typed() =>
    [
        .. new (int Hpa, int C)[] { (1000, 10), (950, 8), (900, 4), (850, 0), (700, -9), (500, -25) }
            .SelectMany((level, row) => new[] { ($"p{row}", $"{level.Hpa}"), ($"t{row}", $"{level.C}"), ($"d{row}", $"{level.C - 4}") }),
    ];

    private Task<string> SendFileAsync(string name) => SendAsync(HttpStatusCode.OK, [], (name, System.IO.File.ReadAllBytes(Demo.Path(name))));

    private Task<string> SendAsync(params (string Name, string Value)[] changes) => SendAsync(HttpStatusCode.OK, changes);

    /// <summary>Sends the fields as the page would after these changes: a radio that is picked, hidden fields as they were.</summary>
    private async Task<string> SendAsync(HttpStatusCode expected, (string Name, string Value)[] changes, (string Name, byte[] Content)? file = null)
    {
        var from = _desk.Length == 0 ? "/briefs/new" : _desk;
        var page = await _ada.GetStringAsync(from, Stopping);
        if (_desk.Length > 0)
            _fields = new(Draft.Fields!);
        var fields = new Dictionary<string, string> { ["site"] = "harrowmere", ["date"] = "2026-05-21", ["groundWetness"] = "normal" };
        foreach (var (name, value) in _fields.Select(field => (field.Key, field.Value)).Concat(changes))
            fields[name] = value;
        using var form = new MultipartFormDataContent();
        foreach (var (name, value) in fields)
            form.Add(new StringContent(value), name);
        form.Add(new StringContent(_desk.Length == 0 ? "0" : $"{Draft.Version}"), "version");
        form.Add(new StringContent(Token().Match(page).Groups[1].Value), "__RequestVerificationToken");
        if (file is { } sent)
            form.Add(new ByteArrayContent(sent.Content), "file", sent.Name);
        using var request = new HttpRequestMessage(HttpMethod.Post, _desk.Length == 0 ? "/briefs" : _desk) { Content = form };
        request.Headers.Add(KeepDraft.LiveHeader, "live");
        var outcome = WebUtility.HtmlDecode(await (await _ada.SendAsync(request, Stopping)).Content.ReadAsStringAsync(Stopping));
        _desk = $"/desk/{Kept().Match(outcome).Groups[1].Value}";
        Assert.Contains(expected == HttpStatusCode.OK ? "data-usable=\"yes\"" : "data-usable=\"no\"", outcome);
        return outcome;
    }

    [GeneratedRegex("""name="__RequestVerificationToken" value="([^"]+)""")]
    private static partial Regex Token();

    [GeneratedRegex("""data-id="([0-9a-f]+)""")]
    private static partial Regex Kept();

    [GeneratedRegex("""<label class="choice">.*?<span>(.*?)</span>""", RegexOptions.Singleline)]
    private static partial Regex Choice();
}
