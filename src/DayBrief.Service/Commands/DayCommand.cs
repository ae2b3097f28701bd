using System.CommandLine;
using System.Text.Json;
using System.Text.Json.Nodes;
using DayBrief.Days;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Commands;

/// <summary>Computes the convective day.</summary>
internal static class DayCommand
{
    public static Command Create()
    {
        var options = new DayOptions();
        var resume = new Option<string?>("--resume")
        {
            Description = "For a folder: file that keeps which inputs are done; the same call goes on after them.",
            HelpName = "FILE",
        };
        var command = new Command("day", "Compute the convective day over a site; print one JSON object, or for a folder one a line.") { resume };
        options.AddTo(command);
        command.SetAction((parsed, stopping) => CommandInput.IsFolder(options.Path(parsed))
            ? FolderAsync(options, parsed, parsed.GetValue(resume), stopping)
            : CommandInput.RefusableAsync(parsed, options.Path(parsed), async () =>
            {
                var line = JsonSerializer.Serialize(await DayAsync(options, parsed, options.Path(parsed), stopping), Json.Line);
                await parsed.InvocationConfiguration.Output.WriteLineAsync(line.AsMemory(), stopping);
            }));
        return command;
    }

    /// <summary>One line a file, which names it.</summary>
    private static async Task<int> FolderAsync(DayOptions options, ParseResult parsed, string? resume, CancellationToken stopping)
    {
        IReadOnlyList<string> inputs = [];
        var exit = await CommandInput.RefusableAsync(parsed, null, () =>
        {
            inputs = CommandInput.Expand(options.Path(parsed));
            return Task.CompletedTask;
        });
        return exit != 0 ? exit : await new Batch(parsed, resume).RunAsync(inputs, LineAsync, stopping);

        async Task<string> LineAsync(string input)
        {
            var day = JsonSerializer.SerializeToNode(await DayAsync(options, parsed, input, stopping), Json.Line)!.AsObject();
            day.Insert(0, "source", new JsonObject { ["name"] = CommandInput.NameOf(input) });
            return day.ToJsonString(Json.Line);
        }
    }

    private static async Task<DayJson> DayAsync(DayOptions options, ParseResult parsed, string path, CancellationToken stopping)
    {
        var site = options.Site(parsed);
        var sounding = await options.SoundingAsync(parsed, path, stopping);
        return DayJson.Of(ConvectiveDay.Compute(sounding, site, options.Date(parsed), options.Assumptions(parsed, site), stopping));
    }
}
