using System.CommandLine;
using System.Text.Json;
using DayBrief.Days;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Verifying;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Commands;

/// <summary>Computes the days of a folder from their morning ascents and holds them against what came true.</summary>
internal static class VerifyCommand
{
    private static readonly Argument<string> Folder = new("FOLDER")
    {
        Description = "Files named YYYY-MM-DD.morning.* (ascent), and any of .afternoon.* (ascent), .reports.txt (METAR), .igc, .actuals.csv.",
    };

    private static readonly Option<string> SiteFile = new("--site") { Description = "The site, a JSON file.", HelpName = "SITE.json", Required = true };
    private static readonly Option<int?> Ensemble = new("--ensemble") { Description = "Members of the ensemble, 0 for none (default 200).", HelpName = "N" };

    public static Command Create()
    {
        var command = new Command("verify", "Compute the days of a folder from their morning ascents and score them against what came true; print one JSON object.")
        {
            Folder, SiteFile, Ensemble,
        };
        command.SetAction((parsed, stopping) => CommandInput.RefusableAsync(parsed, parsed.GetRequiredValue(Folder), async () =>
        {
            var path = parsed.GetRequiredValue(SiteFile);
            var site = File.Exists(path)
                ? SiteJson.Parse(await File.ReadAllTextAsync(path, stopping)).ToSite()
                : throw InvalidInputException.Field("--site", $"There is no file {path}.");
            var assumptions = parsed.GetValue(Ensemble) is { } members ? new DayAssumptions { EnsembleSize = members } : new();
            var files = DayFiles.In(parsed.GetRequiredValue(Folder), out var left);
            var days = files.AsParallel().AsOrdered().WithCancellation(stopping).Select(day => VerifiedDay.Of(day, site, assumptions)).ToArray();
            await parsed.InvocationConfiguration.Output.WriteLineAsync(JsonSerializer.Serialize(VerificationJson.Of(days, left), Json.Line).AsMemory(), stopping);
        }));
        return command;
    }
}
