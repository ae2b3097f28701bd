using System.Text;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>What was signed as plain files that can be read without the database: <c>published/{site}/{day}-{brief}-r{n}</c>
/// <c>.json</c> (the signed record, word for word), <c>.ascent</c> (its ascent as it came), <c>.html</c> (to read),
/// <c>.pdf</c> (the sheet) and <c>.sha256</c> (the hashes of the others, as sha256sum checks them).</summary>
internal sealed class PublishedFiles(DataFolder folder, SignedJournal journal)
{
    private const string Sums = ".sha256";

    public string PathOf(Revision revision, string extension) => PathOf(revision.SiteId, revision.Date, revision.BriefId, revision.Number, extension);

    /// <summary>Whether the files of a revision are all there, without reading it.</summary>
    public bool Has(string siteId, DateOnly date, string briefId, int number) => File.Exists(PathOf(siteId, date, briefId, number, Sums));

    private string PathOf(string siteId, DateOnly date, string briefId, int number, string extension) =>
        Path.Combine(folder.Root, "published", Safe(siteId), $"{date:yyyy-MM-dd}-{Safe(briefId)}-r{number}{extension}");

    /// <summary>All of them are there: the hashes are written last.</summary>
    public bool Has(Revision revision) => File.Exists(PathOf(revision, Sums));

    /// <summary>Writes the files; they are on the disk when this returns.</summary>
    public void Write(Revision revision, byte[] ascent, string page, byte[] sheet)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(PathOf(revision, Sums))!);
        (string Extension, byte[] Content)[] files =
        [
            (".json", Encoding.UTF8.GetBytes(revision.Text)),
            (".ascent", ascent),
            (".html", Encoding.UTF8.GetBytes(page)),
            (".pdf", sheet),
        ];
        journal.Written(revision, files.ToDictionary(file => file.Extension, file => Revision.HashOf(file.Content)));
        var sums = new StringBuilder();
        foreach (var (extension, content) in files)
        {
            Flushed(PathOf(revision, extension), content);
            sums.Append(Revision.HashOf(content)).Append("  ").Append(Path.GetFileName(PathOf(revision, extension))).Append('\n');
        }

        Flushed(PathOf(revision, Sums), Encoding.UTF8.GetBytes(sums.ToString()));
    }

    /// <summary>A file as it was signed; null when it is not there.</summary>
    /// <exception cref="NotAsSignedException">It is another one.</exception>
    public byte[]? Read(Revision revision, string extension)
    {
        var path = PathOf(revision, extension);
        if (!File.Exists(path))
            return null;
        var content = File.ReadAllBytes(path);
        return journal.IsAsWritten(revision, extension, content) ? content : throw new NotAsSignedException(Path.GetFileName(path), SignedFault.File);
    }

    /// <summary>Removes a revision's files.</summary>
    public void Delete(Revision revision)
    {
        foreach (var extension in new[] { Sums, ".json", ".ascent", ".html", ".pdf" })
            File.Delete(PathOf(revision, extension));
    }

    /// <summary>Written beside its place, flushed to the disk, then moved there: whole or not at all.</summary>
    private static void Flushed(string path, byte[] content)
    {
        var beside = path + ".part";
        using (var file = new FileStream(beside, FileMode.Create, FileAccess.Write, FileShare.None))
        {
            file.Write(content);
            file.Flush(flushToDisk: true);
        }

        File.Move(beside, path, overwrite: true);
    }

    /// <summary>Ids come from outside: nothing of them may lead out of the folder.</summary>
    private static string Safe(string id)
    {
        var safe = string.Concat(id.Select(letter => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_' ? letter : '_'));
        return safe.Length > 0 ? safe : "_";
    }
}
