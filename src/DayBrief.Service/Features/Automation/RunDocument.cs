using DayBrief.Service.Infrastructure;
using LiteDB;

namespace DayBrief.Service.Features.Automation;

/// <summary>A run as the ledger keeps it.</summary>
internal static class RunDocument
{
    public static BsonDocument Write(Run run) => new()
    {
        ["_id"] = run.Slot.Key,
        ["job"] = Choice.NameOf(run.Slot.Job),
        ["site"] = run.Slot.SiteId,
        ["date"] = run.Slot.Date.DayNumber,
        ["slot"] = run.Slot.Name,
        ["dueAt"] = run.Slot.DueAt.ToUnixTimeMilliseconds(),
        ["state"] = Choice.NameOf(run.State),
        ["attempts"] = run.Attempts,
        ["startedAt"] = run.StartedAt.ToUnixTimeMilliseconds(),
        ["endedAt"] = run.EndedAt?.ToUnixTimeMilliseconds(),
        ["nextAt"] = run.NextAt?.ToUnixTimeMilliseconds(),
        ["code"] = run.Result is { } result ? Choice.NameOf(result.Code) : null,
        ["figures"] = new BsonArray((run.Result?.Figures ?? []).Select(figure => new BsonValue(figure))),
        ["process"] = run.Process,
    };

    public static Run Read(BsonDocument found) => new()
    {
        Slot = new(
            Choice.Parse<AutomationJob>(found["job"].AsString)!.Value,
            found["site"].AsString ?? Slot.Installation,
            DateOnly.FromDayNumber(found["date"].AsInt32),
            found["slot"].AsString,
            Instant(found["dueAt"])!.Value),
        State = Choice.Parse<RunState>(found["state"].AsString)!.Value,
        Attempts = found["attempts"].AsInt32,
        StartedAt = Instant(found["startedAt"])!.Value,
        EndedAt = Instant(found["endedAt"]),
        NextAt = Instant(found["nextAt"]),
        Result = Choice.Parse<RunCode>(found["code"].AsString) is { } code
            ? new(code, [.. found["figures"].AsArray.Select(figure => figure.AsString)])
            : null,
        Process = found["process"].AsString,
    };

    private static DateTimeOffset? Instant(BsonValue value) =>
        value.IsNull ? null : DateTimeOffset.FromUnixTimeMilliseconds(value.AsInt64);
}
