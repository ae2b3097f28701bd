using BenchmarkDotNet.Attributes;
using DayBrief.Days;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Desk;
using DayBrief.Service.Features.Sites;
using DayBrief.Soundings;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace DayBrief.Benchmarks;

/// <summary>What a change on the desk costs until its outcome is there (asked for: 300 ms), and its parts.</summary>
[MemoryDiagnoser]
public class PreviewBenchmarks : IAsyncDisposable
{
    private static readonly DateTimeOffset Now = new(2026, 5, 21, 6, 30, 0, TimeSpan.Zero);

    private readonly byte[] _ascent = File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "soundings", "broad-post-frontal.txt"));
    private readonly HtmlRenderer _renderer = new(new ServiceCollection().BuildServiceProvider(), NullLoggerFactory.Instance);

    private readonly BriefInputs _inputs = new()
    {
        SoundingId = "",
        Site = new SiteJson
        {
            Id = "bench",
            Name = "Harrowmere (invented)",
            Latitude = 52.24,
            Longitude = -1.41,
            ElevationM = 118,
            TimeZone = "Europe/London",
        },
        Date = new(2026, 5, 21),
        PreparedAt = Now,
        Assumptions = new() { MaxTemperatureC = 17 },
    };

    private MadeBrief _made = null!;
    private Reader _reader = null!;
    private DeskClient _desk = null!;
    private int _changes;

    [GlobalSetup]
    public async Task Prepare()
    {
        _made = new("bench", _inputs, Day());
        _reader = Reader.Of(_made.Brief.Site);
        _desk = await DeskClient.StartAsync(System.Text.Encoding.UTF8.GetString(_ascent));
    }

    [Benchmark]
    public Sounding Ascent() => SoundingReader.Read(_ascent, "bench");

    /// <summary>With its ensemble of 500, each scaled to its own maximum.</summary>
    [Benchmark]
    public Brief Day() => BriefDesk.Compute(_inputs, Ascent());

    [Benchmark]
    public Task<string> Outcome() => _renderer.Dispatcher.InvokeAsync(async () =>
    {
        var result = await _renderer.RenderComponentAsync<DeskResult>(ParameterView.FromDictionary(new Dictionary<string, object?>
        {
            [nameof(DeskResult.View)] = new DeskView(new Kept(new() { Id = "bench", SiteId = "bench", Date = _inputs.Date, EditedAt = Now }, new(new Dictionary<string, string>()), _made, [], null), _reader, Now) { Ascents = new([], [], false, [], [], null) },
        }));
        return result.ToHtmlString();
    });

    [Benchmark]
    public Task<string> PhonePage() => StandalonePage.RenderAsync(_made, _reader, Now);

    [Benchmark]
    public byte[] SheetAsPdf() => PrintBrief.Pdf(_made, BriefSheet.Draw(_made, _reader, "http://localhost/briefs/bench", Now));

    /// <summary>Over HTTP, the draft kept and on the disk: a change that makes another day.</summary>
    [Benchmark(Baseline = true)]
    public Task<int> OtherDay() => _desk.ChangeAsync("maxTemperatureC", 15 + (++_changes * 0.0137 % 6));

    /// <summary>The same with a change of words only.</summary>
    [Benchmark]
    public Task<int> OtherWords() => _desk.ChangeAsync("instructorNote", ++_changes);

    [GlobalCleanup]
    public async ValueTask DisposeAsync()
    {
        await _renderer.DisposeAsync();
        await _desk.DisposeAsync();
        GC.SuppressFinalize(this);
    }
}
