using System.Text;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure.Journals;

namespace DayBrief.Service.Infrastructure;

/// <summary>A power cut while pages go over the data file leaves any mix of old and new ones: the store starts, and nothing signed is lost.</summary>
public sealed class PowerCutTests : IDisposable
{
    private const int PageBytes = 8192;

    private readonly string _root = Directory.CreateTempSubdirectory("daybrief-test-").FullName;

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [Fact]
    public void Of_256_mixes_of_old_and_new_pages_each_starts_with_everything_signed()
    {
        var (older, newer, journal, signed) = Morning();
        var (damaged, random) = (0, new Random(1));
        for (var mix = 0; mix < 256; mix++)
        {
            var folder = new DataFolder(Path.Combine(_root, $"mix-{mix}"));
            File.WriteAllBytes(folder.DatabasePath, Mixed(older, newer, random));
            File.WriteAllBytes(Path.Combine(folder.Root, Journal.FileName), journal);
            File.WriteAllText(Path.Combine(folder.Root, "daybrief.running"), "");
            using (var store = new Opened(folder))
            {
                Assert.Equal(signed, store.Revisions.SignedSince(DateTimeOffset.UnixEpoch).Select(revision => revision.Hash).Order());
                Assert.Equal(signed.Length, store.Heads.Between(new(2026, 1, 1), new(2026, 12, 31)).Count);
                store.Database.Write("after", rows => rows.Insert(new LiteDB.BsonDocument { ["_id"] = 1 }));
                damaged += store.Database.Mended.Count > 0 ? 1 : 0;
            }

            using var again = new Opened(folder);
            Assert.Equal(signed.Length, again.Revisions.SignedSince(DateTimeOffset.UnixEpoch).Count);
            Assert.Empty(again.Database.Mended);
        }

        Assert.True(damaged > 20, $"Only {damaged} mixes were damaged: the test does not test much.");
    }

    [Fact]
    public void A_damaged_store_is_set_aside_whole_and_the_newest_backup_that_can_be_read_takes_its_place()
    {
        var (older, newer, journal, signed) = Morning();
        var folder = new DataFolder(Path.Combine(_root, "damaged"));
        byte[] torn = [.. newer[..(newer.Length / 3)], .. new byte[newer.Length - (newer.Length / 3)]];
        File.WriteAllBytes(folder.DatabasePath, torn);
        File.WriteAllBytes(Path.Combine(folder.Root, Journal.FileName), journal);
        File.WriteAllText(Path.Combine(folder.Root, "daybrief.running"), "");
        var backups = Directory.CreateDirectory(Path.Combine(folder.Root, "backups")).FullName;
        BackUp(Path.Combine(backups, "daybrief-2026-05-20.zip"), older, new(2026, 5, 20));
        BackUp(Path.Combine(backups, "daybrief-2026-05-21.zip"), torn, new(2026, 5, 21));
        using var store = new Opened(folder);
        Assert.Contains(store.Database.Mended, line => line.Contains("daybrief-2026-05-20.zip", StringComparison.Ordinal));
        Assert.Equal(signed, store.Revisions.SignedSince(DateTimeOffset.UnixEpoch).Select(revision => revision.Hash).Order());
        Assert.Equal("kept in the backup", store.Database.Collection("people").FindById("ada")["note"].AsString);
        var aside = Assert.Single(Directory.GetDirectories(Path.Combine(folder.Root, "set-aside")));
        Assert.Equal(torn, File.ReadAllBytes(Path.Combine(aside, "daybrief.db")));
        Assert.Equal(store.Database.Mended, File.ReadAllLines(Path.Combine(aside, "report.txt")));
    }

    [Fact]
    public void A_missing_store_beside_a_journal_is_no_new_beginning()
    {
        var (_, _, journal, signed) = Morning();
        var folder = new DataFolder(Path.Combine(_root, "missing"));
        File.WriteAllBytes(Path.Combine(folder.Root, Journal.FileName), journal);
        using var store = new Opened(folder);
        Assert.Equal(signed, store.Revisions.SignedSince(DateTimeOffset.UnixEpoch).Select(revision => revision.Hash).Order());
        Assert.Contains(store.Database.Mended, line => line.Contains("was not there", StringComparison.Ordinal));
    }

    /// <summary>The file before and after a morning's signatures and other work, the journal, and the hashes of what was signed.</summary>
    private (byte[] Older, byte[] Newer, byte[] Journal, string[] Signed) Morning()
    {
        var folder = new DataFolder(Path.Combine(_root, "morning"));
        byte[] older;
        using (var store = new Opened(folder))
        {
            store.Database.Write("people", people => people.Insert(new LiteDB.BsonDocument { ["_id"] = "ada", ["note"] = "kept in the backup" }));
            Work(store, 0);
            store.Database.CopyTo(Path.Combine(_root, "older.db"));
            older = File.ReadAllBytes(Path.Combine(_root, "older.db"));
            Work(store, 1);
        }

        using var after = new Opened(folder);
        after.Database.CopyTo(Path.Combine(_root, "newer.db"));
        return (
            older,
            File.ReadAllBytes(Path.Combine(_root, "newer.db")),
            File.ReadAllBytes(Path.Combine(folder.Root, Journal.FileName)),
            [.. after.Revisions.SignedSince(DateTimeOffset.UnixEpoch).Select(revision => revision.Hash).Order()]);
    }

    private static void Work(Opened store, int part)
    {
        for (var i = 0; i < 6; i++)
        {
            store.Revisions.Add(Signed($"b{part}{i}", new(2026, 5, 1 + (part * 10) + i)));
            store.Database.Write("soundings", rows => rows.Insert(new LiteDB.BsonDocument { ["_id"] = $"s{part}{i}", ["content"] = Encoding.UTF8.GetBytes(new string('x', 9000 + i)) }));
            if (part == 1)
                store.Database.Write("soundings", rows => rows.Delete($"s0{i}"));
        }
    }

    private static Revision Signed(string id, DateOnly date) => new Revision
    {
        BriefId = id,
        Number = 1,
        SiteId = "field",
        Date = date,
        SignedBy = "Ada Invented",
        SignedById = "ada",
        SignedAt = new(date, new(7, 30), TimeSpan.Zero),
        DraftVersion = 1,
        ProgramVersion = "test",
        Inputs = new() { SoundingId = "s", Site = new SiteJson { Id = "field", Name = "Field" }, Date = date, PreparedAt = DateTimeOffset.UnixEpoch },
        SoundingHash = "none",
        Content = new string('c', 5000),
    }.Sealed();

    /// <summary>Each page the old or the new one.</summary>
    private static byte[] Mixed(byte[] older, byte[] newer, Random random)
    {
        var mixed = (byte[])newer.Clone();
        for (var at = 0; at < newer.Length; at += PageBytes)
        {
            if (random.Next(2) == 0)
                continue;
            mixed.AsSpan(at, Math.Min(PageBytes, newer.Length - at)).Clear();
            if (at < older.Length)
                older.AsSpan(at, Math.Min(PageBytes, older.Length - at)).CopyTo(mixed.AsSpan(at));
        }

        return mixed;
    }

    private static void BackUp(string path, byte[] store, DateTime written)
    {
        using (var zip = System.IO.Compression.ZipFile.Open(path, System.IO.Compression.ZipArchiveMode.Create))
        using (var entry = zip.CreateEntry("daybrief.db").Open())
            entry.Write(store);
        File.SetLastWriteTimeUtc(path, written);
    }

    private sealed class Opened : IDisposable
    {
        public Opened(DataFolder folder)
        {
            Database = new(folder);
            Heads = new(Database);
            Revisions = new(Database, Heads, new(new(folder, new(folder, new string('k', 32)))));
        }

        public Database Database { get; }

        public DayHeadStore Heads { get; }

        public RevisionStore Revisions { get; }

        public void Dispose() => Database.Dispose();
    }
}
