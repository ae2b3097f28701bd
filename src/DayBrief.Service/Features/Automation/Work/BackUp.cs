using System.Globalization;
using System.IO.Compression;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Infrastructure.Journals;

namespace DayBrief.Service.Features.Automation.Work;

/// <summary>Copies the store and the published files into one zip a night, and keeps the newest. Idempotent: a night's second
/// takes the place of its first. Then all that was signed is held against the journal.</summary>
internal sealed class BackUp(Database database, DataFolder data, UpkeepSettings settings, SignedCheck signed)
{
    private const string Prefix = "daybrief-";

    public RunResult Run(Slot slot)
    {
        CreateFolder(settings.BackupFolder);
        var name = slot.Name.StartsWith("by hand", StringComparison.Ordinal)
            ? $"{Prefix}{slot.DueAt.UtcDateTime:yyyy-MM-dd-HHmmss}.zip"
            : $"{Prefix}{slot.Date:yyyy-MM-dd}.zip";
        var path = Path.Combine(settings.BackupFolder, name);
        var copy = path + ".db.part";
        try
        {
            database.CopyTo(copy);
            Pack(path + ".part", copy);
            File.Move(path + ".part", path, overwrite: true);
        }
        finally
        {
            File.Delete(copy);
        }

        // What is older may be the only copy of what has been changed since: it stays until somebody has looked.
        if (signed.Run() is { Count: > 0 } findings)
            throw new RunFailedException(new(RunCode.Broken, $"verify-signed: {string.Join(", ", findings.Take(5).Select(finding => $"{finding.Id} {Choice.NameOf(finding.Fault)}"))}"), mayPass: false);
        foreach (var old in Kept().Skip(settings.Backups))
            old.Delete();
        return new(RunCode.BackedUp, name, new FileInfo(path).Length.ToString(CultureInfo.InvariantCulture));
    }

    /// <summary>The backups there are, newest first.</summary>
    public IReadOnlyList<FileInfo> Kept() => Directory.Exists(settings.BackupFolder)
        ? [.. new DirectoryInfo(settings.BackupFolder).EnumerateFiles($"{Prefix}*.zip").OrderByDescending(file => file.LastWriteTimeUtc).ThenByDescending(file => file.Name, StringComparer.Ordinal)]
        : [];

    private void Pack(string path, string copyOfStore)
    {
        using var file = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None);
        // Password hashes are in it: for the service's own account only.
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(file.SafeFileHandle, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        using (var zip = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            zip.CreateEntryFromFile(copyOfStore, Path.GetFileName(data.DatabasePath), CompressionLevel.Fastest);
            if (File.Exists(Path.Combine(data.Root, Journal.FileName)))
                zip.CreateEntryFromFile(Path.Combine(data.Root, Journal.FileName), Journal.FileName, CompressionLevel.Fastest);
            foreach (var published in Published())
                zip.CreateEntryFromFile(published, Path.GetRelativePath(data.Root, published).Replace('\\', '/'), CompressionLevel.Fastest);
        }

        file.Flush(flushToDisk: true);
    }

    private IEnumerable<string> Published() =>
        Path.Combine(data.Root, "published") is var folder && Directory.Exists(folder)
            ? Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Where(file => !file.EndsWith(".part", StringComparison.Ordinal)).Order(StringComparer.Ordinal)
            : [];

    private static void CreateFolder(string path)
    {
        if (OperatingSystem.IsWindows())
            Directory.CreateDirectory(path);
        else
            Directory.CreateDirectory(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }
}
