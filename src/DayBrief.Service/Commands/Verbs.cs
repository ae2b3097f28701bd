using System.CommandLine;

namespace DayBrief.Service.Commands;

/// <summary>The program's verbs. Without one it serves, and passes what it was given to the host (such as --urls).</summary>
internal static class Verbs
{
    private static readonly string[] AboutTheProgram = ["--help", "-h", "-?", "--version"];

    public static async Task<int> RunAsync(string[] args)
    {
        if (args.Length == 0 || (args[0].StartsWith("--", StringComparison.Ordinal) && !AboutTheProgram.Contains(args[0])))
            return await ServeCommand.RunAsync(args);
        var root = new RootCommand("DayBrief: from the morning sounding to the day's brief for a gliding field. Without a verb: serve.")
        {
            ServeCommand.Create(),
            AnalyseCommand.Create(),
            DayCommand.Create(),
            BriefCommand.Create(),
            CentreCommand.Create(),
            FlightCommand.Create(),
            VerifyCommand.Create(),
            VerifySignedCommand.Create(),
            HealthCommand.Create(),
        };
        var parsed = root.Parse(args);
        if (parsed.Errors.Count == 0)
            return await parsed.InvokeAsync();
        foreach (var error in parsed.Errors)
            await Console.Error.WriteLineAsync(error.Message);
        await Console.Error.WriteLineAsync("--help after the verb shows what it takes.");
        return CommandInput.Usage;
    }
}
