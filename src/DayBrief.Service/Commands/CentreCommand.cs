using System.CommandLine;
using System.Text.Json;
using DayBrief.Flight.Centring;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Service.Features.Centring;
using DayBrief.Service.Infrastructure;
using DayBrief.Units;

namespace DayBrief.Service.Commands;

/// <summary>Simulates the ways of centring in one thermal.</summary>
internal static class CentreCommand
{
    private static readonly Option<string> ThermalFile = new("--thermal") { Description = "The thermal, a JSON file, or - for standard input.", HelpName = "THERMAL.json", Required = true };
    private static readonly GliderOption Class = new("The class of glider.") { Required = true };
    private static readonly Option<double?> Bank = new("--bank") { Description = "Bank of the circle (default: the best, held to 25 to 45).", HelpName = "DEG" };
    private static readonly Option<double?> CircleSpeed = new("--speed") { Description = "Speed in the circle (default: the best at the bank); 15 % above the stall in the turn or more.", HelpName = "KT" };
    private static readonly Option<double?> Lag = new("--lag") { Description = "Time constant of the variometer (default 2).", HelpName = "S" };
    private static readonly Option<long?> Seed = new("--seed") { Description = "Seed of the encounters (default 1).", HelpName = "S" };

    public static Command Create()
    {
        CommandNumber.InRange(Bank, 15, 55);
        CommandNumber.InRange(CircleSpeed, 20, 120);
        CommandNumber.InRange(Lag, 0, 10);
        var command = new Command("centre", "Simulate the ways of centring in one thermal; print one JSON object.")
        {
            ThermalFile, Class, Bank, CircleSpeed, Lag, Seed,
        };
        command.SetAction((parsed, stopping) =>
            CommandInput.RefusableAsync(parsed, parsed.GetRequiredValue(ThermalFile), () => RunAsync(parsed, stopping)));
        return command;
    }

    private static async Task RunAsync(ParseResult parsed, CancellationToken stopping)
    {
        var text = System.Text.Encoding.UTF8.GetString(await CommandInput.ReadAsync(parsed.GetRequiredValue(ThermalFile), stopping));
        var thermal = ThermalJson.Parse(text).ToThermal();
        var glider = GenericGlider.Of(Class.Of(parsed));
        var options = new CentringOptions
        {
            BankDeg = parsed.GetValue(Bank),
            Speed = parsed.GetValue(CircleSpeed) is { } knots ? Speed.FromKnots(knots) : null,
            Seed = parsed.GetValue(Seed) ?? 1,
        };
        if (options.Speed is { } speed)
            CircleAsked.Check(glider, CentringStudy.BankFor(thermal, glider, options), speed);
        var result = Study(thermal, glider, new Variometer(parsed.GetValue(Lag) ?? Variometer.Usual.LagS), options);
        await parsed.InvocationConfiguration.Output.WriteLineAsync(JsonSerializer.Serialize(CentringJson.Of(result), Json.Line).AsMemory(), stopping);
    }

    private static CentringResult Study(
        Flight.Thermals.Thermal thermal, Glider glider, Variometer instrument, CentringOptions options)
    {
        try
        {
            return CentringStudy.Run(thermal, glider, instrument, options);
        }
        catch (ArgumentOutOfRangeException bad)
        {
            throw InvalidInputException.Field("--speed", bad.Message);
        }
    }
}
