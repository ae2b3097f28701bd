namespace DayBrief.Service.Features.Briefs.Revisions;

/// <summary>At start: writes the plain files of revisions that were signed just before a stop.</summary>
internal sealed class FinishSignedFiles(Signing signing) : BackgroundService
{
    protected override Task ExecuteAsync(CancellationToken stoppingToken) => signing.CompleteFilesAsync();
}
