using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace DayBrief.Service.Infrastructure.Journals;

/// <summary>What was acknowledged and must not be lost or changed, one line each in a file of its own that is only ever added to and is
/// on the disk before anybody is told. Each line is sealed together with the one before.</summary>
/// <remarks>A line is an HMAC-SHA-256 (RFC 2104) in hexadecimal, a blank, and JSON on one line. A last line that a power cut left
/// unfinished was acknowledged to nobody and is cut off; any other line that does not fit ends what can be believed.</remarks>
internal sealed class Journal
{
    public const string FileName = "signed.journal";

    private readonly Lock _writing = new();
    private readonly byte[] _key;
    private readonly Room _room;
    private readonly string _path;
    private readonly List<JournalEntry> _entries = [];

    public Journal(DataFolder folder, JournalKey key, Room? room = null)
    {
        _room = room ?? new(folder);
        _path = Path.Combine(folder.Root, FileName);
        _key = key.Bytes;
        IsNew = !File.Exists(_path);
        if (!IsNew)
            Read();
    }

    /// <summary>There was none when this program started.</summary>
    public bool IsNew { get; }

    /// <summary>Line, from 1, that does not fit the one before; null when all do.</summary>
    public int? BrokenAt { get; private set; }

    /// <summary>The seal of the last line. Written down elsewhere, it shows later whether what was before it is still there.</summary>
    public string Anchor { get; private set; } = "";

    /// <summary>What can be believed, in order.</summary>
    public IReadOnlyList<JournalEntry> Entries
    {
        get
        {
            lock (_writing)
                return [.. _entries];
        }
    }

    /// <summary>Whether a seal was ever the last.</summary>
    public bool Had(string anchor) => Entries.Any(entry => entry.Seal == anchor);

    /// <summary>Adds a line; it is on the disk when this returns.</summary>
    /// <param name="kind">What happened.</param>
    /// <param name="id">To what.</param>
    /// <param name="content">All of it.</param>
    /// <param name="atStart">What the store has already, which needs no more room there.</param>
    /// <exception cref="IOException">It could not be written; nothing was added.</exception>
    public void Add(string kind, string id, JsonObject content, bool atStart = false)
    {
        if (!atStart)
            _room.Check();
        lock (_writing)
        {
            var text = new JsonObject { ["kind"] = kind, ["id"] = id, ["content"] = content }.ToJsonString(Json.Line);
            var seal = SealOf(text);
            using var file = new FileStream(_path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.Read);
            var end = file.Length;
            try
            {
                file.Seek(0, SeekOrigin.End);
                file.Write(Encoding.UTF8.GetBytes($"{seal} {text}\n"));
                file.Flush(flushToDisk: true);
            }
            catch (IOException)
            {
                file.SetLength(end);
                throw;
            }

            _entries.Add(new(kind, id, content, seal));
            Anchor = seal;
        }
    }

    private void Read()
    {
        var bytes = File.ReadAllBytes(_path);
        var whole = Array.LastIndexOf(bytes, (byte)'\n') + 1;
        if (whole < bytes.Length)
        {
            using var file = new FileStream(_path, FileMode.Open, FileAccess.Write);
            file.SetLength(whole);
        }

        var lines = Encoding.UTF8.GetString(bytes, 0, whole).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        for (var i = 0; i < lines.Length && BrokenAt is null; i++)
        {
            if (EntryOf(lines[i]) is { } entry)
            {
                _entries.Add(entry);
                Anchor = entry.Seal;
            }
            else
            {
                BrokenAt = i + 1;
            }
        }
    }

    private JournalEntry? EntryOf(string line)
    {
        try
        {
            if (line.Length < 66 || !CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(line[..64]), Encoding.UTF8.GetBytes(SealOf(line[65..]))))
                return null;
            var json = JsonNode.Parse(line[65..])!.AsObject();
            return new((string)json["kind"]!, (string)json["id"]!, json["content"]!.AsObject(), line[..64]);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private string SealOf(string text) => Convert.ToHexStringLower(HMACSHA256.HashData(_key, Encoding.UTF8.GetBytes($"{Anchor}\n{text}")));
}

/// <summary>One line.</summary>
/// <param name="Kind">What happened.</param>
/// <param name="Id">To what.</param>
/// <param name="Content">All of it.</param>
/// <param name="Seal">Of it and all before it.</param>
internal sealed record JournalEntry(string Kind, string Id, JsonObject Content, string Seal);
