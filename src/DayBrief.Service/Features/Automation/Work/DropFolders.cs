using System.Collections.Concurrent;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Automation.Work;

/// <summary>The folders into which other programs lay ascents: <c>drop/SITE</c> in the data folder.</summary>
internal sealed class DropFolders(DataFolder data, TimeProvider clock)
{
    private static readonly TimeSpan Settling = TimeSpan.FromSeconds(10);

    private readonly ConcurrentDictionary<string, (long Length, DateTime Written)> _seen = new();

    public string Of(string siteId) => Path.Combine(data.Root, "drop", siteId);

    /// <summary>Looks and remembers what was there; true when a file has not changed since the look before.</summary>
    public bool HasSettled(string siteId)
    {
        var settled = false;
        foreach (var file in Files(siteId))
        {
            var now = (file.Length, file.LastWriteTimeUtc);
            settled |= _seen.TryGetValue(file.FullName, out var before) && before == now;
            _seen[file.FullName] = now;
        }

        return settled;
    }

    /// <summary>The files that nobody writes any more, oldest first.</summary>
    public IReadOnlyList<FileInfo> Settled(string siteId) =>
        [.. Files(siteId).Where(file => !(_seen.TryGetValue(file.FullName, out var before) && before.Length != file.Length))];

    /// <summary>Moves a file out of the way, under a name that says when.</summary>
    public string Move(FileInfo file, string siteId, string folder)
    {
        _seen.TryRemove(file.FullName, out _);
        var target = Directory.CreateDirectory(Path.Combine(Of(siteId), folder)).FullName;
        var path = Path.Combine(target, $"{clock.GetUtcNow():yyyyMMdd-HHmmssfff}-{file.Name}");
        file.MoveTo(path, overwrite: true);
        return path;
    }

    /// <summary>Hidden files and ".part", ".tmp" are somebody's unfinished work; links could lead anywhere.</summary>
    private FileInfo[] Files(string siteId)
    {
        var folder = new DirectoryInfo(Of(siteId));
        if (!IsName(siteId) || !folder.Exists)
            return [];
        var quiet = clock.GetUtcNow().UtcDateTime - Settling;
        return [.. folder.EnumerateFiles()
            .Where(file => file.LinkTarget is null && !file.Name.StartsWith('.') && file.Extension is not (".part" or ".tmp" or ".filepart"))
            .Where(file => file.LastWriteTimeUtc <= quiet)
            .OrderBy(file => file.LastWriteTimeUtc)
            .ThenBy(file => file.Name, StringComparer.Ordinal)];
    }

    private static bool IsName(string siteId) =>
        siteId.Length is > 0 and <= 100 && siteId.All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_');
}
