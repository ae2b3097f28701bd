using DayBrief.Service.Infrastructure.Outgoing;


namespace DayBrief.Service.Features.Automation.Work;

/// <summary>What a failed fetch means for its run: a refusal is final, anything else may pass.</summary>
internal static class FetchFailure
{
    public static RunFailedException Of(FetchException failed) => new(
        new(RunCode.FetchFailed, failed.Fault.ToString(), failed.About), mayPass: !failed.IsRefusal, failed.RetryAfter, failed);
}
