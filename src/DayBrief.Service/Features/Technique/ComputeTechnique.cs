using Hangfire;

namespace DayBrief.Service.Features.Technique;

/// <summary>The job behind the technique of a brief. Idempotent: a finished study is not made again.</summary>
internal sealed class ComputeTechnique(TechniqueDesk desk)
{
    [AutomaticRetry(Attempts = 2)]
    public void Run(TechniqueKey key, CancellationToken stopping) => desk.Compute(key, stopping);

    /// <summary>Puts the study into the queue unless it is there or done.</summary>
    internal static void Ask(TechniqueDesk desk, IBackgroundJobClient jobs, TechniqueKey key)
    {
        if (desk.Claim(key))
            jobs.Enqueue<ComputeTechnique>(job => job.Run(key, CancellationToken.None));
    }
}
