using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Briefs.Revisions;

namespace DayBrief.Service;

/// <summary>Signs, amends and withdraws briefs at a host of the test's own, whose clock stands in the morning of 21 May 2026.</summary>
internal sealed class SignedBriefs : IAsyncDisposable
{
    public const string Reason = "Warmer than thought";

    private static readonly Signer Ada = new("ada", "Ada Invented");

    public SetClock Clock { get; } = new(new(2026, 5, 21, 7, 30, 0, TimeSpan.Zero));

    public ServiceHost Host { get; }

    public SignedBriefs() => Host = ServiceHost.With(Clock);

    public ValueTask DisposeAsync() => Host.DisposeAsync();

    /// <summary>A brief for today, of the demonstration's ascent and field.</summary>
    /// <param name="site">Another field.</param>
    /// <param name="reason">Why it takes the place of one that was signed before.</param>
    /// <param name="date">Another day.</param>
    /// <param name="judgement">What the instructor overrules.</param>
    public async Task<string> SignAsync(string? site = null, string? reason = null, DateOnly? date = null, JudgementJson? judgement = null)
    {
        var invented = Host.Get<BriefStore>().Find(DemonstrationDays.First)!.Inputs!;
        var made = Host.Get<BriefDesk>().Make(invented with
        {
            Demonstration = false,
            PreparedBy = "Ada Invented",
            PreparedAt = Clock.Now,
            Date = date ?? invented.Date,
            Judgement = judgement,
            Site = site is null ? invented.Site : invented.Site with { Id = site, Name = $"Field {site}" },
        });
        await SignDraftAsync(made.Id!, reason);
        return made.Id!;
    }

    /// <summary>The next revision, for a day of another temperature.</summary>
    public async Task AmendAsync(string id, double maxTemperatureC)
    {
        var inputs = Host.Get<BriefStore>().Find(id)!.Inputs!;
        Host.Get<BriefDesk>().Make(inputs with { Assumptions = inputs.Assumptions with { MaxTemperatureC = maxTemperatureC } }, id);
        await SignDraftAsync(id, Reason);
    }

    public void Withdraw(string id) => Host.Get<Signing>().Withdraw(id, Ada, "The ascent was another day's");

    private async Task SignDraftAsync(string id, string? reason)
    {
        var outcome = await Host.Get<Signing>().SignAsync(id, Host.Get<BriefStore>().Find(id)!.Version, Ada, reason);
        Assert.NotNull(outcome.Revision);
    }
}
