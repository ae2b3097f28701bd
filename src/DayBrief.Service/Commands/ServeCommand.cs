using System.CommandLine;

namespace DayBrief.Service.Commands;

/// <summary>Runs the web service.</summary>
internal static class ServeCommand
{
    public static Command Create()
    {
        var command = new Command("serve", "Run the web service (the default). Settings come from the environment: ASPNETCORE_URLS, DAYBRIEF_DATA.");
        command.SetAction((_, stopping) => RunAsync(stopping));
        return command;
    }

    public static async Task<int> RunAsync(CancellationToken stopping)
    {
        await WebService.Create([]).RunAsync(stopping);
        return 0;
    }
}
