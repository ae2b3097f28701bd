using System.IO.Compression;
using System.Text.Json;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Automation.Work;

/// <summary>A backup is worth what a restore brings back.</summary>
public sealed class BackUpTests
{
    private static readonly DateTimeOffset Evening = new(2026, 6, 23, 20, 0, 0, TimeSpan.Zero);

    [Fact]
    public async Task Restored_into_a_new_data_folder_the_brief_is_the_same_to_the_last_figure()
    {
        string before;
        string id;
        var restored = Directory.CreateTempSubdirectory("daybrief-restored-").FullName;
        using (var rig = new AutomationRig(Evening))
        {
            var made = Brief(rig);
            (id, before) = (made.Id!, Text(made));
            Directory.CreateDirectory(Path.Combine(rig.Data, "published", "demo"));
            File.WriteAllText(Path.Combine(rig.Data, "published", "demo", "signed.json"), "signed");
            await rig.TickAsync(Evening.AddHours(7));
            var run = rig.Run(AutomationJob.Backup, Slot.Installation);
            Assert.Equal((RunState.Done, "daybrief-2026-06-24.zip"), (run.State, run.Result!.Figures[0]));
            // What comes after the backup is not in it.
            rig.Get<BriefStore>().Save("later", made.Inputs);
            ZipFile.ExtractToDirectory(Path.Combine(rig.Data, "backups", "daybrief-2026-06-24.zip"), restored);
        }

        using (var again = new AutomationRig(Evening.AddDays(1), restored))
        {
            Assert.Equal(before, Text(again.Get<BriefDesk>().Find(id)!));
            Assert.Null(again.Get<BriefDesk>().Find("later"));
            Assert.Equal("signed", File.ReadAllText(Path.Combine(restored, "published", "demo", "signed.json")));
        }

        Directory.Delete(restored, recursive: true);
    }

    [Fact]
    public async Task A_backup_taken_while_others_write_is_whole()
    {
        using var rig = new AutomationRig(Evening);
        var (written, stopping) = (0, TestContext.Current.CancellationToken);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(stopping);
        var writing = Task.Run(() => WriteTwins(rig.Get<Database>(), ref written, stop.Token), stopping);
        for (var copy = 0; copy < 10; copy++)
        {
            // Each copy begins while the writer is at it, however slow it is: not before it has got on since the last.
            var before = Volatile.Read(ref written);
            await Eventually.TrueAsync(() => Volatile.Read(ref written) > before, stopping);
            var run = rig.Get<BackUp>().Run(Slot.ByHand(AutomationJob.Backup, Slot.Installation, new(2026, 6, 23), Evening.AddSeconds(copy)));
            Assert.Equal(RunCode.BackedUp, run.Code);
            var (first, second) = Twins(Path.Combine(rig.Data, "backups", run.Figures[0]));
            Assert.True(first == second && first >= before, $"copy {copy} holds {first} beside {second}; {before} had been written before");
        }

        await stop.CancelAsync();
        await writing;
    }

    [Fact]
    public async Task The_newest_are_kept_and_only_so_many()
    {
        using var rig = new AutomationRig(Evening, null, ("DayBrief:Backup:Keep", "3"));
        for (var night = 0; night < 5; night++)
            await rig.TickAsync(Evening.AddHours(7).AddDays(night));
        Assert.Equal(
            ["daybrief-2026-06-26.zip", "daybrief-2026-06-27.zip", "daybrief-2026-06-28.zip"],
            rig.Get<BackUp>().Kept().Select(file => file.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task A_new_installation_has_missed_no_backup()
    {
        using var rig = new AutomationRig(Evening);
        Assert.Empty(await rig.TickAsync(Evening.AddMinutes(1)));
    }

    [Fact]
    public void A_backup_is_for_the_services_own_account_only()
    {
        using var rig = new AutomationRig(Evening);
        rig.Get<BackUp>().Run(Slot.ByHand(AutomationJob.Backup, Slot.Installation, new(2026, 6, 23), Evening));
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, Assert.Single(rig.Get<BackUp>().Kept()).UnixFileMode);
    }

    /// <summary>The same number in two documents, far apart, within one write: a copy made between the two would show it.</summary>
    private static void WriteTwins(Database database, ref int written, CancellationToken stop)
    {
        while (!stop.IsCancellationRequested)
        {
            var number = written + 1;
            database.Write("filler", filler =>
            {
                filler.Upsert(Numbered("first", number));
                filler.Upsert(Numbered($"between {number % 50}", number));
                filler.Upsert(Numbered("second", number));
            });
            Volatile.Write(ref written, number);
        }

        static LiteDB.BsonDocument Numbered(string id, int number) => new() { ["_id"] = id, ["number"] = number, ["text"] = new string('x', 2000) };
    }

    private static (int First, int Second) Twins(string backup)
    {
        var folder = Directory.CreateTempSubdirectory("daybrief-twins-").FullName;
        try
        {
            ZipFile.ExtractToDirectory(backup, folder);
            using var store = new LiteDB.LiteDatabase(Assert.Single(Directory.GetFiles(folder)));
            var filler = store.GetCollection("filler");
            return (filler.FindById("first")["number"].AsInt32, filler.FindById("second")["number"].AsInt32);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static MadeBrief Brief(AutomationRig rig) => rig.Get<BriefDesk>().Make(new()
    {
        SoundingId = rig.Get<SoundingStore>().Save(File.ReadAllBytes(Demo.Path("anticyclone-short-dry.csv")), "demo").Id,
        Site = AutomationRig.Site(new()),
        Date = new(2026, 6, 24),
        PreparedAt = Evening,
    });

    private static string Text(MadeBrief made) => JsonSerializer.Serialize(BriefJson.Of(made), Json.Line);
}
