using System.CommandLine;
using System.Text.Json;
using DayBrief.Service.Features.Briefs.Revisions;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Infrastructure.Journals;

namespace DayBrief.Service.Commands;

/// <summary>Holds everything that was signed against the sealed journal, and prints what does not fit.</summary>
internal static class VerifySignedCommand
{
    private static readonly Option<string?> Anchor = new("--anchor")
    {
        Description = "A seal that an earlier run printed and that was kept elsewhere: it must still be among the journal's.",
    };

    public static Command Create()
    {
        var command = new Command("verify-signed", "Check all that was signed in DAYBRIEF_DATA (texts, signers, chain, files, journal) while the service is stopped; exit code 0 if nothing was changed.")
        {
            Anchor,
        };
        command.SetAction((parsed, _) => RunAsync(parsed));
        return command;
    }

    private static async Task<int> RunAsync(ParseResult parsed)
    {
        try
        {
            await using var service = WebService.Parts();
            var (journal, key) = (service.Services.GetRequiredService<Journal>(), service.Services.GetRequiredService<JournalKey>());
            var findings = service.Services.GetRequiredService<SignedCheck>().Run();
            var signed = service.Services.GetRequiredService<SignedJournal>().Ids.Count;
            var anchored = parsed.GetValue(Anchor) is not { Length: > 0 } anchor || journal.Had(anchor);
            var report = new
            {
                Signed = signed,
                JournalBrokenAtLine = journal.BrokenAt,
                AnchorFound = anchored,
                KeyApart = key.IsApart,
                Anchor = journal.Anchor,
                Findings = findings.Select(finding => new { finding.Id, Fault = Choice.NameOf(finding.Fault) }),
            };
            await parsed.InvocationConfiguration.Output.WriteLineAsync(JsonSerializer.Serialize(report, Json.Line));
            return findings.Count == 0 && journal.BrokenAt is null && anchored ? 0 : CommandInput.Refused;
        }
        catch (Exception cause) when (cause is DataFolderInUseException or UnusableSettingException)
        {
            await parsed.InvocationConfiguration.Error.WriteLineAsync(cause.Message);
            return CommandInput.Refused;
        }
    }
}
