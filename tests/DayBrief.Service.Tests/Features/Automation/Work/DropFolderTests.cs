using DayBrief.Service.Features.Arrivals;
using DayBrief.Service.Features.Sites;

namespace DayBrief.Service.Features.Automation.Work;

/// <summary>Ascents laid into a folder by other programs.</summary>
public sealed class DropFolderTests : IDisposable
{
    private static readonly DateTimeOffset Now = new(2026, 6, 24, 5, 0, 0, TimeSpan.Zero);

    private readonly AutomationRig _rig = new(Now);

    public DropFolderTests() => _rig.Get<SiteStore>().Save(AutomationRig.Site(new()));

    public void Dispose() => _rig.Dispose();

    [Fact]
    public async Task A_file_that_stands_still_is_taken_and_moved()
    {
        Lay("today.csv", Demo.Text("anticyclone-short-dry.csv"), age: 60);
        Assert.Empty(await _rig.TickAsync(Now));
        Assert.Single(await _rig.TickAsync(Now.AddMinutes(1)));
        Assert.Equal("today.csv", Assert.Single(_rig.Get<ArrivalStore>().Of("demo")).Origin);
        Assert.EndsWith("-today.csv", Assert.Single(Names("taken")), StringComparison.Ordinal);
        Assert.Empty(Names("."));
        Assert.Empty(await _rig.TickAsync(Now.AddMinutes(2)));
    }

    [Fact]
    public async Task A_file_that_is_still_written_waits()
    {
        Lay("growing.csv", "pressure_hpa", age: 20);
        await _rig.TickAsync(Now);
        Lay("growing.csv", "pressure_hpa,temperature_c", age: 15);
        Assert.Empty(await _rig.TickAsync(Now.AddSeconds(5)));
        Lay("growing.csv", Demo.Text("anticyclone-short-dry.csv"), age: -62);
        Assert.Empty(await _rig.TickAsync(Now.AddSeconds(65)));
        Assert.Equal(["growing.csv"], Names("."));
    }

    [Fact]
    public async Task What_is_no_ascent_is_laid_aside_with_the_reason()
    {
        Lay("holiday.txt", "Dear all, no flying next week.", age: 60);
        Lay("good.csv", Demo.Text("anticyclone-short-dry.csv"), age: 50);
        await _rig.TickAsync(Now);
        await _rig.TickAsync(Now.AddMinutes(1));
        Assert.Equal(["1", "1"], _rig.Run(AutomationJob.DropFolder).Result!.Figures);
        Assert.Equal(2, Names("refused").Length);
        var reason = Assert.Single(Names("refused"), name => name.EndsWith("-holiday.txt.txt", StringComparison.Ordinal));
        Assert.NotEmpty(File.ReadAllText(Path.Combine(Folder, "refused", reason)).Trim());
    }

    /// <summary>Where two lie there, the newer air is the draft's.</summary>
    [Fact]
    public async Task Of_two_files_the_newest_ascent_makes_the_draft()
    {
        Lay("later.csv", Demo.Text("anticyclone-short-dry.csv"), age: 300);
        Lay("earlier.csv", Demo.Text("anticyclone-short-dry.csv").Replace("T05:00:00Z", "T00:00:00Z", StringComparison.Ordinal), age: 30);
        await _rig.TickAsync(Now);
        await _rig.TickAsync(Now.AddMinutes(1));
        Assert.Equal(["later.csv", "earlier.csv"], _rig.Get<ArrivalStore>().Of("demo").Select(arrived => arrived.Origin));
    }

    [Fact]
    public async Task Unfinished_hidden_and_linked_files_are_left()
    {
        Lay("upload.csv.part", Demo.Text("anticyclone-short-dry.csv"), age: 60);
        Lay(".hidden.csv", Demo.Text("anticyclone-short-dry.csv"), age: 60);
        File.CreateSymbolicLink(Path.Combine(Folder, "link.csv"), Demo.Path("anticyclone-short-dry.csv"));
        await _rig.TickAsync(Now);
        Assert.Empty(await _rig.TickAsync(Now.AddMinutes(1)));
    }

    private string Folder => Path.Combine(_rig.Data, "drop", "demo");

    private string[] Names(string folder) =>
        Path.Combine(Folder, folder) is var path && Directory.Exists(path) ? [.. Directory.GetFiles(path).Select(file => Path.GetFileName(file)!)] : [];

    private void Lay(string name, string text, int age)
    {
        Directory.CreateDirectory(Folder);
        File.WriteAllText(Path.Combine(Folder, name), text);
        File.SetLastWriteTimeUtc(Path.Combine(Folder, name), Now.UtcDateTime.AddSeconds(-age));
    }
}
