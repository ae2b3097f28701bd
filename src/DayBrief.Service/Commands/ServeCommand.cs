using System.CommandLine;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Commands;

/// <summary>Runs the web service.</summary>
internal static class ServeCommand
{
    private static readonly Argument<string[]> HostSettings = new("SETTING")
    {
        Description = "Settings of the host, such as --urls=http://localhost:8080.",
        Arity = ArgumentArity.ZeroOrMore,
    };

    public static Command Create()
    {
        var command = new Command("serve", "Run the web service (the default). The environment sets ASPNETCORE_URLS and DAYBRIEF_DATA.")
        {
            HostSettings,
        };
        command.TreatUnmatchedTokensAsErrors = false;
        command.SetAction((parsed, _) => RunAsync([.. parsed.GetValue(HostSettings) ?? [], .. parsed.UnmatchedTokens]));
        return command;
    }

    public static async Task<int> RunAsync(string[] settings)
    {
        WebApplication service;
        try
        {
            service = WebService.Create(settings);
        }
        catch (Exception cause) when (cause is DataFolderInUseException or UnusableSettingException)
        {
            await Console.Error.WriteLineAsync(cause.Message);
            return CommandInput.Refused;
        }

        await service.RunAsync();
        return 0;
    }
}
