using DayBrief.Service.Features.Automation.Fetching;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Infrastructure.Outgoing;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace DayBrief.Service.Features.Automation;

/// <summary>The automation without web server and queue, on a data folder of its own and a clock that the test sets.</summary>
internal sealed class AutomationRig : IDisposable
{
    private readonly ServiceProvider _services;
    private readonly bool _keep;

    public AutomationRig(DateTimeOffset now, string? data = null, params (string Name, string Value)[] settings)
    {
        _keep = data is not null;
        Data = data ?? Directory.CreateTempSubdirectory("daybrief-auto-").FullName;
        Clock = new(now);
        var configuration = new ConfigurationBuilder()
            .AddInMemoryCollection(settings.Select(setting => KeyValuePair.Create(setting.Name, (string?)setting.Value)))
            .Build();
        var services = new ServiceCollection();
        services.AddLogging();
        services.AddSingleton<IConfiguration>(configuration);
        services.AddSingleton<TimeProvider>(Clock);
        services.AddSingleton(new DataFolder(Data));
        services.AddSingleton<Database>();
        services.AddSoundings();
        services.AddSingleton(new PublicAddress(configuration));
        services.AddSingleton<AuditLog>();
        services.AddBriefs();
        services.AddOutgoing(configuration);
        services.AddAutomation();
        services.AddSingleton(new FetchLimits { Whole = TimeSpan.FromMinutes(2), Silence = TimeSpan.FromMinutes(2), FirstDelay = TimeSpan.FromMilliseconds(20), LongestDelay = TimeSpan.FromMilliseconds(100) });
        _services = services.BuildServiceProvider();
        // As the first tick of a start does.
        _ = Ledger;
    }

    public string Data { get; }

    public SetClock Clock { get; }

    public RunLedger Ledger => Get<RunLedger>();

    public T Get<T>()
        where T : notnull => _services.GetRequiredService<T>();

    /// <summary>What the tick would put into the queue now, run at once, as often as said.</summary>
    public async Task<IReadOnlyList<Slot>> TickAsync(DateTimeOffset now, int times = 1)
    {
        Clock.Now = now;
        var due = Get<DueRuns>().Now();
        foreach (var slot in Enumerable.Repeat(due, times).SelectMany(slots => slots))
            await Get<RunSlot>().RunAsync(slot, TestContext.Current.CancellationToken);
        return due;
    }

    public Run Run(AutomationJob job, string site = "demo") =>
        Ledger.Since(DateTimeOffset.MinValue).First(run => run.Slot.Job == job && run.Slot.SiteId == site);

    public void Dispose()
    {
        _services.Dispose();
        if (!_keep)
            Directory.Delete(Data, recursive: true);
    }

    /// <summary>A site that has things done by itself.</summary>
    public static SiteJson Site(SiteAutomationJson automation, string zone = "Europe/London", double latitude = 52.24, double longitude = -1.41) =>
        SiteJson.Parse(Demo.Site) with { TimeZone = zone, Latitude = latitude, Longitude = longitude, Automation = automation };
}
