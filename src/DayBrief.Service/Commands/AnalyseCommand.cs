using System.CommandLine;
using System.Text.Json;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Service.Commands;

/// <summary>Reads soundings and prints one analysis a line.</summary>
internal static class AnalyseCommand
{
    private static readonly Argument<string[]> Paths = new("PATH")
    {
        Description = "Files, folders (all files in them and their folders) or - for standard input.",
        Arity = ArgumentArity.OneOrMore,
    };

    private static readonly Option<double[]> SurfaceTemperature = new("--surface-temperature")
    {
        Description = "Surface temperature in °C whose dry top is wanted; may be repeated.",
        HelpName = "C",
        AllowMultipleArgumentsPerToken = false,
    };

    private static readonly Option<double?> Elevation = new("--elevation")
    {
        Description = "Height of the ascent's surface above mean sea level, in metres.",
        HelpName = "M",
    };

    private static readonly Option<string?> Resume = new("--resume")
    {
        Description = "File that keeps which inputs are done; the same call goes on after them.",
        HelpName = "FILE",
    };

    public static Command Create()
    {
        CommandNumber.InRange(SurfaceTemperature, "surfaceTemperature");
        CommandNumber.InRange(Elevation, "elevation");
        var command = new Command("analyse", "Read soundings of any supported format; print one analysis a line (NDJSON).")
        {
            Paths, SurfaceTemperature, Elevation, Resume,
        };
        command.SetAction((parsed, stopping) => RunAsync(parsed, stopping));
        return command;
    }

    private static async Task<int> RunAsync(ParseResult parsed, CancellationToken stopping)
    {
        var options = new AnalysisOptions(
            [.. (parsed.GetValue(SurfaceTemperature) ?? []).Select(Temperature.FromCelsius)],
            parsed.GetValue(Elevation) is { } metres ? Altitude.FromMetres(metres) : null);
        IReadOnlyList<string> inputs = [];
        var exit = await CommandInput.RefusableAsync(parsed, null, () =>
        {
            inputs = [.. parsed.GetRequiredValue(Paths).SelectMany(CommandInput.Expand)];
            return Task.CompletedTask;
        });
        return exit != 0 ? exit : await new Batch(parsed, parsed.GetValue(Resume)).RunAsync(inputs, LineAsync, stopping);

        async Task<string> LineAsync(string input)
        {
            var sounding = SoundingReader.Read(await CommandInput.ReadAsync(input, stopping), CommandInput.NameOf(input));
            return JsonSerializer.Serialize(AnalysisJson.Of(options.Analyse(sounding)), Json.Line);
        }
    }
}
