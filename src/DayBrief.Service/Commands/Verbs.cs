using System.CommandLine;

namespace DayBrief.Service.Commands;

/// <summary>The program's verbs. Without one it serves.</summary>
internal static class Verbs
{
    public static async Task<int> RunAsync(string[] args)
    {
        var root = new RootCommand("DayBrief: from the morning sounding to the day's brief for a gliding field.")
        {
            ServeCommand.Create(),
            AnalyseCommand.Create(),
        };
        root.SetAction((_, stopping) => ServeCommand.RunAsync(stopping));
        var parsed = root.Parse(args);
        if (parsed.Errors.Count == 0)
            return await parsed.InvokeAsync();
        foreach (var error in parsed.Errors)
            await Console.Error.WriteLineAsync(error.Message);
        await Console.Error.WriteLineAsync("--help after the verb shows what it takes.");
        return CommandInput.Usage;
    }
}
