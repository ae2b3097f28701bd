using System.CommandLine;
using System.Text.Json;
using DayBrief.Service.Features.Flights;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Commands;

/// <summary>Reads flight recorder files and prints what was flown, one flight a line.</summary>
internal static class FlightCommand
{
    private static readonly Argument<string[]> Paths = new("PATH")
    {
        Description = "Flight recorder files (FAI IGC standard), folders (all files in them) or - for standard input.",
        Arity = ArgumentArity.OneOrMore,
    };

    public static Command Create()
    {
        var command = new Command("flight", "Measure climbs, turns, bank, speed and wind of flights from recorder files; print one flight a line (NDJSON), without names.")
        {
            Paths,
        };
        command.SetAction((parsed, stopping) => RunAsync(parsed, stopping));
        return command;
    }

    private static async Task<int> RunAsync(ParseResult parsed, CancellationToken stopping)
    {
        var exit = 0;
        foreach (var input in parsed.GetRequiredValue(Paths).SelectMany(CommandInput.Expand))
        {
            exit = Math.Max(exit, await CommandInput.RefusableAsync(parsed, input, async () =>
            {
                var flight = FlightReading.Of(await CommandInput.ReadAsync(input, stopping), CommandInput.NameOf(input), "PATH");
                await parsed.InvocationConfiguration.Output.WriteLineAsync(JsonSerializer.Serialize(flight, Json.Line).AsMemory(), stopping);
            }));
        }

        return exit;
    }
}
