using DayBrief.Service.Infrastructure;
using LiteDB;

namespace DayBrief.Service.Features.Automation;

/// <summary>Which slots have been run: what makes a run happen once, survive a restart and be caught up after one.</summary>
internal sealed class RunLedger
{
    private const string Collection = "runs";

    // A run that another start of the program began and did not end died with it.
    private readonly string _process = Guid.NewGuid().ToString("N");
    private readonly Database _database;

    public RunLedger(Database database, TimeProvider clock)
    {
        _database = database;
        FirstUsedAt = First(database, clock.GetUtcNow());
        database.Write(Collection, runs =>
        {
            runs.EnsureIndex("state");
            runs.EnsureIndex("startedAt");
        });
    }

    /// <summary>When this installation first counted its runs; what was due before is not missed.</summary>
    public DateTimeOffset FirstUsedAt { get; }

    /// <summary>Begins a slot unless it has been done, is under way, has failed for good or waits for a later time.</summary>
    public Run? TryBegin(Slot slot, DateTimeOffset now)
    {
        Run? begun = null;
        _database.Write(Collection, runs =>
        {
            var former = runs.FindById(slot.Key) is { } found ? RunDocument.Read(found) : null;
            if (former is not null && !MayBegin(former, now))
                return;
            begun = new() { Slot = slot, State = RunState.Running, Attempts = (former?.Attempts ?? 0) + 1, StartedAt = now, Process = _process };
            runs.Upsert(RunDocument.Write(begun));
        });
        return begun;
    }

    /// <summary>Writes how a run ended.</summary>
    public void End(Run run) => _database.Write(Collection, runs => runs.Upsert(RunDocument.Write(run)));

    public Run? Find(string key) => _database.Collection(Collection).FindById(key) is { } found ? RunDocument.Read(found) : null;

    /// <summary>Whether a slot could begin now.</summary>
    public bool IsOpen(Slot slot, DateTimeOffset now) => Find(slot.Key) is not { } run || MayBegin(run, now);

    /// <summary>Runs that failed and whose time has come again, or that died with an earlier start of the program.</summary>
    public IReadOnlyList<Slot> Unfinished(DateTimeOffset now) =>
    [
        .. _database.Collection(Collection)
            .Find(Query.Or(Query.EQ("state", Choice.NameOf(RunState.Waiting)), Query.EQ("state", Choice.NameOf(RunState.Running))))
            .Select(RunDocument.Read)
            .Where(run => MayBegin(run, now))
            .OrderBy(run => run.Slot.DueAt)
            .Select(run => run.Slot),
    ];

    /// <summary>The latest runs of a site, or of the installation, newest first.</summary>
    public IReadOnlyList<Run> Since(DateTimeOffset from) =>
    [
        .. _database.Collection(Collection).Find(Query.GTE("startedAt", from.ToUnixTimeMilliseconds()))
            .Select(RunDocument.Read)
            .OrderByDescending(run => run.StartedAt),
    ];

    public int Forget(DateTimeOffset before)
    {
        var count = 0;
        _database.Write(Collection, runs => count = runs.DeleteMany(Query.LT("startedAt", before.ToUnixTimeMilliseconds())));
        return count;
    }

    private static DateTimeOffset First(Database database, DateTimeOffset now)
    {
        var first = now.ToUnixTimeMilliseconds();
        database.Write("installation", facts =>
        {
            if (facts.FindById("first-run") is { } known)
                first = known["at"].AsInt64;
            else
                facts.Insert(new BsonDocument { ["_id"] = "first-run", ["at"] = first });
        });
        return DateTimeOffset.FromUnixTimeMilliseconds(first);
    }

    private bool MayBegin(Run run, DateTimeOffset now) => run.State switch
    {
        RunState.Waiting => run.NextAt <= now,
        RunState.Running => run.Process != _process,
        _ => false,
    };
}
