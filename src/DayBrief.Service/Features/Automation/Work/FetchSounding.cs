using System.Globalization;
using DayBrief.Service.Features.Automation.Fetching;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Infrastructure.Outgoing;
using DayBrief.Soundings;

namespace DayBrief.Service.Features.Automation.Work;

/// <summary>Fetches a site's ascent from its address. Idempotent: the same bytes are kept once.</summary>
internal sealed class FetchSounding(AddressFetcher fetcher, SoundingIntake intake)
{
    // The balloon goes up within the hour before; a shift of an hour more is still the wanted ascent.
    private static readonly TimeSpan Early = TimeSpan.FromHours(3);

    public async Task<RunResult> RunAsync(SiteJson site, Slot slot, CancellationToken stopping)
    {
        if (site.Automation is not { SoundingAddress: { } template } automation)
            return new(RunCode.NothingToDo);
        var wanted = Wanted(slot.DueAt, automation.SoundingHourUtc ?? 0);
        var address = AddressTemplate.Expand(template, wanted, automation.Station)
            ?? throw new RunFailedException(new(RunCode.FetchFailed, nameof(FetchFault.Scheme), template), mayPass: false);
        var content = await fetcher.FetchAsync(address, stopping);
        try
        {
            return Keep(site, slot, wanted, content, address);
        }
        catch (InvalidSoundingException refused)
        {
            // The page that stands there may be one that says "not yet".
            throw new RunFailedException(new(RunCode.ContentRefused, refused.Message), cause: refused);
        }
    }

    /// <summary>The latest ascent of that hour that can have been made.</summary>
    public static DateTimeOffset Wanted(DateTimeOffset at, int hourUtc)
    {
        var sameDay = new DateTimeOffset(at.UtcDateTime.Date, TimeSpan.Zero).AddHours(hourUtc);
        return sameDay <= at ? sameDay : sameDay.AddDays(-1);
    }

    private RunResult Keep(SiteJson site, Slot slot, DateTimeOffset wanted, byte[] content, Uri address)
    {
        var (arrived, isNew) = intake.Take(site, slot.Date, content, Path.GetFileName(address.AbsolutePath), address.Host);
        if (arrived.ValidAt < wanted - Early)
            throw new RunFailedException(new(RunCode.SoundingOld, Text(arrived.ValidAt.Value), Text(wanted)));
        return isNew
            ? new(RunCode.SoundingKept, arrived.Station ?? "?", arrived.ValidAt is { } valid ? Text(valid) : "?", arrived.Origin)
            : new(RunCode.SoundingKnown, arrived.Origin);
    }

    private static string Text(DateTimeOffset time) => time.UtcDateTime.ToString("yyyy-MM-dd HH:mm'Z'", CultureInfo.InvariantCulture);
}
