using System.CommandLine;
using System.Text.Json;
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
        var command = new Command("day", "Compute the convective day over a site; print one JSON object.");
        options.AddTo(command);
        command.SetAction((parsed, stopping) => CommandInput.RefusableAsync(parsed, options.Path(parsed), async () =>
        {
            var site = options.Site(parsed);
            var sounding = await options.SoundingAsync(parsed, stopping);
            var day = ConvectiveDay.Compute(sounding, site, options.Date(parsed), options.Assumptions(parsed, site));
            await parsed.InvocationConfiguration.Output.WriteLineAsync(JsonSerializer.Serialize(DayJson.Of(day), Json.Line).AsMemory(), stopping);
        }));
        return command;
    }
}
