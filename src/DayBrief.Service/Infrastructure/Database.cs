using LiteDB;

namespace DayBrief.Service.Infrastructure;

/// <summary>The embedded store: one file, one process, one writer at a time.</summary>
/// <remarks>LiteDB allows a second opener and parallel writers, and both lose data; hence the lock file and the lock.
/// Every write is checkpointed and so flushed to the data file.</remarks>
internal sealed class Database : IDisposable
{
    private readonly Lock _writing = new();
    private readonly FileStream _lockFile;
    private readonly LiteDatabase _lite;
    private readonly string _path;

    public Database(DataFolder folder)
    {
        _path = folder.DatabasePath;
        _lockFile = folder.LockOrThrow();
        _lite = new LiteDatabase(new ConnectionString { Filename = folder.DatabasePath, Connection = ConnectionType.Direct });
        _lite.CheckpointSize = 1;
    }

    public ILiteCollection<BsonDocument> Collection(string name) => _lite.GetCollection(name);

    /// <summary>Runs a write while no other runs.</summary>
    public void Write(string collection, Action<ILiteCollection<BsonDocument>> write)
    {
        lock (_writing)
            write(_lite.GetCollection(collection));
    }

    /// <summary>Several writes as one, while no other runs: all of them are kept, or none.</summary>
    public void Together(Action<Func<string, ILiteCollection<BsonDocument>>> writes)
    {
        lock (_writing)
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
        _lockFile.Dispose();
    }
}
