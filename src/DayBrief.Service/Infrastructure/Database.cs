using LiteDB;

namespace DayBrief.Service.Infrastructure;

/// <summary>The embedded store: one file, one process, one writer at a time.</summary>
/// <remarks>LiteDB allows a second opener and parallel writers, and both lose data; hence the lock file and the lock.
/// Every write is checkpointed and so flushed to the data file.</remarks>
internal sealed class Database : IDisposable
{
    private readonly Lock _writing = new();
    private readonly FileStream _lockFile;
    private readonly Room _room;
    private readonly StoreRescue _rescue;
    private volatile LiteDatabase _lite;
    private volatile bool _serving;
    private readonly string _path;

    /// <param name="folder">Where it lies.</param>
    /// <param name="room">Whether there is room to write; null for that of the folder's disk.</param>
    /// <param name="life">What is written before the service has started is not held to the room: it is nothing where there is a store.</param>
    /// <param name="settings">Where backups lie, if not in the folder.</param>
    public Database(DataFolder folder, Room? room = null, IHostApplicationLifetime? life = null, IConfiguration? settings = null)
    {
        _room = room ?? new(folder);
        life?.ApplicationStarted.Register(() => _serving = true);
        _path = folder.DatabasePath;
        _lockFile = folder.LockOrThrow();
        _rescue = new(folder, settings?["DayBrief:Backup:Folder"]);
        Mended = _rescue.Mend();
        _lite = Open();
    }

    /// <summary>What was done to a damaged store at this start, a line each.</summary>
    public IReadOnlyList<string> Mended { get; }

    private LiteDatabase Open()
    {
        // Password hashes and addresses with keys are in it: for the service's own account only, from its first byte on.
        if (!OperatingSystem.IsWindows())
        {
            using (new FileStream(_path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.ReadWrite))
                File.SetUnixFileMode(_path, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        }

        return new(new ConnectionString { Filename = _path, Connection = ConnectionType.Direct }) { CheckpointSize = 1 };
    }

    public ILiteCollection<BsonDocument> Collection(string name) => _lite.GetCollection(name);

    /// <summary>Runs a write while no other runs.</summary>
    public void Write(string collection, Action<ILiteCollection<BsonDocument>> write)
    {
        lock (_writing)
            Guarded(() => write(_lite.GetCollection(collection)));
    }

    /// <summary>Refuses where there is no room, and opens the store anew where the disk failed it in the middle of a write.</summary>
    /// <exception cref="NoRoomException">There is no room; nothing was written.</exception>
    private void Guarded(Action write)
    {
        if (_serving)
            _room.Check();
        try
        {
            write();
        }
        catch (IOException)
        {
            Reopen();
            throw;
        }
        catch (LiteException cause) when (cause.InnerException is IOException || cause.Message.Contains("closed", StringComparison.OrdinalIgnoreCase))
        {
            Reopen();
            throw new IOException(cause.Message, cause);
        }
    }

    private void Reopen()
    {
        try
        {
            _lite.Dispose();
        }
        catch (Exception cause) when (cause is IOException or LiteException)
        {
            // It could not write its last pages either; what is on the disk counts.
        }

        _lite = Open();
    }

    /// <summary>Several writes as one, while no other runs: all of them are kept, or none.</summary>
    public void Together(Action<Func<string, ILiteCollection<BsonDocument>>> writes)
    {
        lock (_writing)
            Guarded(() => InOneTransaction(writes));
    }

    private void InOneTransaction(Action<Func<string, ILiteCollection<BsonDocument>>> writes)
    {
        _lite.BeginTrans();
        try
        {
            writes(name => _lite.GetCollection(name));
            _lite.Commit();
        }
        catch
        {
            _lite.Rollback();
            throw;
        }
    }

    /// <summary>Copies the whole store as it stands between two writes, and opens the copy to see that it can be read.</summary>
    /// <exception cref="LiteException">The copy cannot be read.</exception>
    public void CopyTo(string path)
    {
        lock (_writing)
        {
            _lite.Checkpoint();
            File.Copy(_path, path, overwrite: true);
        }

        using var copy = new LiteDatabase(new ConnectionString { Filename = path, ReadOnly = true });
        foreach (var collection in copy.GetCollectionNames().ToArray())
        {
            foreach (var document in copy.GetCollection(collection).FindAll())
                _ = document["_id"];
        }
    }

    public void Dispose()
    {
        _lite.Dispose();
        _rescue.Closed();
        _lockFile.Dispose();
    }
}
