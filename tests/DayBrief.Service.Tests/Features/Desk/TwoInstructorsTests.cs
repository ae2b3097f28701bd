using System.Net;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.People;

namespace DayBrief.Service.Features.Desk;

/// <summary>Two instructors at one draft, each with the page that he opened.</summary>
[Collection(OneService.Name)]
public sealed class TwoInstructorsTests : IAsyncLifetime
{
    private readonly ServiceHost _host = new();
    private HttpClient _ada = null!;
    private HttpClient _bob = null!;
    private string _desk = "";

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _ada = await _host.SignedInAsync(Role.Instructor, "Ada Invented");
        _bob = await _host.SignedInAsync(Role.Instructor, "Bob Invented");
        var made = await _ada.SendFormAsync("/briefs/new", "/briefs", Fields("17", "1"));
        Assert.Equal(HttpStatusCode.Redirect, made.StatusCode);
        _desk = made.Headers.Location!.ToString();
    }

    public ValueTask DisposeAsync() => _host.DisposeAsync();

    [Fact]
    public async Task The_second_is_told_of_the_first() =>
        Assert.Contains("Ada Invented kept this draft at", WebUtility.HtmlDecode(await _bob.GetStringAsync(_desk, Stopping)));

    [Fact]
    public async Task Changes_of_different_fields_are_merged_and_told()
    {
        await _ada.SendFormAsync(_desk, _desk, [("version", "1"), .. Fields("19", "1")]);
        var page = await (await _bob.SendFormAsync(_desk, _desk, [("version", "1"), .. Fields("17", "4")])).TextAsync(HttpStatusCode.OK);
        Assert.Contains("Merged with what Ada Invented kept meanwhile: Highest temperature expected, °C", page);
        var inputs = Draft.Inputs!;
        Assert.Equal((19, 4, "Bob Invented"), (inputs.Assumptions.MaxTemperatureC, inputs.Assumptions.CloudOktas, Draft.EditedBy));
    }

    [Fact]
    public async Task A_field_that_both_changed_is_shown_with_both_values_and_nothing_is_kept_over_the_first()
    {
        await _ada.SendFormAsync(_desk, _desk, [("version", "1"), .. Fields("19", "1")]);
        var page = await (await _bob.SendFormAsync(_desk, _desk, [("version", "1"), .. Fields("23", "1")])).TextAsync(HttpStatusCode.Conflict);
        Assert.Contains("Ada Invented has changed the same fields", page);
        Assert.Contains("<td>19</td><td>23</td>", page);
        Assert.Equal(19, Draft.Inputs!.Assumptions.MaxTemperatureC);
        await _bob.SendFormAsync(_desk, _desk, [("version", "1"), ("resolve", "mine"), .. Fields("23", "1")]);
        Assert.Equal(23, Draft.Inputs!.Assumptions.MaxTemperatureC);
        Assert.Equal("19", _host.Get<BriefStore>().Find(Draft.Id, 2)!.Fields!["maxTemperatureC"]);
    }

    [Fact]
    public async Task Who_signs_what_another_has_changed_since_is_told_and_signs_nothing()
    {
        await _ada.SendFormAsync(_desk, _desk, [("version", "1"), .. Fields("19", "1")]);
        var page = await (await _bob.SendFormAsync(_desk, $"{_desk}/sign", ("version", "1"))).TextAsync(HttpStatusCode.UnprocessableEntity);
        Assert.Contains("Ada Invented has changed the draft since you saw it.", page);
        Assert.Equal(HttpStatusCode.Redirect, (await _bob.SendFormAsync(_desk, $"{_desk}/sign", ("version", "2"))).StatusCode);
    }

    private Draft Draft => _host.Get<BriefStore>().Find(_desk.Split('/')[^1])!;

    private static (string Name, string Value)[] Fields(string maxC, string oktas) =>
    [
        ("text", Demo.Text("broad-post-frontal.txt")), ("site", "harrowmere"), ("date", "2026-05-21"), ("groundWetness", "normal"),
        ("maxTemperatureC", maxC), ("cloudOktas", oktas),
    ];
}
