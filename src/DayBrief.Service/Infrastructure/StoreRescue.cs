using System.IO.Compression;
using LiteDB;

namespace DayBrief.Service.Infrastructure;

/// <summary>At a start after which the store was not closed: every document is copied into a new file. A store that cannot be read
/// through is set aside whole, and the newest backup that can be read takes its place; what was signed since comes from the journal.</summary>
internal sealed class StoreRescue(DataFolder folder, string? backupFolder)
{
    private static readonly TimeSpan LongestReading = TimeSpan.FromMinutes(5);

    private readonly string _path = folder.DatabasePath;
    private readonly string _log = Path.Combine(folder.Root, "daybrief-log.db");
    private readonly string _running = Path.Combine(folder.Root, "daybrief.running");
    private readonly string _journal = Path.Combine(folder.Root, Journals.Journal.FileName);

    /// <summary>Makes the store whole, if it is not, and notes that it is in use from now on.</summary>
    /// <returns>What was done, a line each; empty when nothing was.</returns>
    public IReadOnlyList<string> Mend()
    {
        IReadOnlyList<string> report = [];
        if (File.Exists(_path) ? File.Exists(_running) : File.Exists(_journal))
            report = MendNow();
        File.WriteAllText(_running, "The store is in use. Left behind by a stop that did not close it.\n");
        return report;
    }

    /// <summary>The store was closed.</summary>
    public void Closed() => File.Delete(_running);

    private List<string> MendNow()
    {
        var fresh = _path + ".new";
        if (File.Exists(_path) && CanCopy(_path, fresh))
        {
            // Until the last step the old file is whole; after it, the new one is.
            File.Move(fresh, _path, overwrite: true);
            File.Delete(_log);
            return [];
        }

        var report = new List<string>();
        var aside = Directory.CreateDirectory(Path.Combine(folder.Root, "set-aside", $"{Guid.NewGuid():N}")).FullName;
        report.Add(File.Exists(_path) ? $"The store was damaged and lies in {aside}." : $"The store was not there; what was signed is in {_journal}.");
        foreach (var old in new[] { _path, _log }.Where(File.Exists))
            File.Move(old, Path.Combine(aside, Path.GetFileName(old)));
        report.Add(FromBackup(fresh) is { } name
            ? $"From the backup {name}: fields, people, keys, ascents, drafts and reports as they were then."
            : "No backup could be read: fields, people, keys and drafts are gone from the store.");
        report.Add("From the journal: what was signed and withdrawn since; from the published files: its ascents.");
        File.WriteAllLines(Path.Combine(aside, "report.txt"), report);
        return report;
    }

    private string? FromBackup(string fresh)
    {
        var backups = new DirectoryInfo(backupFolder is { Length: > 0 } ? backupFolder : Path.Combine(folder.Root, "backups"));
        if (!backups.Exists)
            return null;
        foreach (var backup in backups.EnumerateFiles("daybrief-*.zip").OrderByDescending(file => file.LastWriteTimeUtc))
        {
            var extracted = _path + ".backup";
            if (!Extract(backup.FullName, extracted) || !CanCopy(extracted, fresh))
                continue;
            File.Move(fresh, _path, overwrite: true);
            File.Delete(extracted);
            return backup.Name;
        }

        return null;
    }

    private bool Extract(string zip, string to)
    {
        try
        {
            using var archive = ZipFile.OpenRead(zip);
            if (archive.GetEntry(Path.GetFileName(_path)) is not { } entry)
                return false;
            entry.ExtractToFile(to, overwrite: true);
            return true;
        }
        catch (InvalidDataException)
        {
            return false;
        }
    }

    /// <summary>Reads every document once and writes it anew. A damaged file fails in many ways, going round in circles among them.</summary>
    private static bool CanCopy(string from, string to)
    {
        File.Delete(to);
        var copying = Task.Run(() => Copy(from, to));
        try
        {
            return copying.Wait(LongestReading);
        }
        catch (AggregateException)
        {
            File.Delete(to);
            return false;
        }
    }

    private static void Copy(string from, string to)
    {
        using var old = new LiteDatabase(new ConnectionString { Filename = from, ReadOnly = true });
        using var copy = new LiteDatabase(new ConnectionString { Filename = to });
        foreach (var collection in old.GetCollectionNames().ToArray())
        {
            var seen = new HashSet<BsonValue>();
            foreach (var document in old.GetCollection(collection).FindAll())
            {
                if (!seen.Add(document["_id"]))
                    throw new InvalidDataException($"{document["_id"]} stands twice in {collection}.");
                copy.GetCollection(collection).Insert(document);
            }

            if (seen.Count != old.GetCollection(collection).Count())
                throw new InvalidDataException($"Not all of {collection} can be read.");
        }

        copy.Checkpoint();
    }
}
