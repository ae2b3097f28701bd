using System.CommandLine;
using System.Net.Sockets;
using DayBrief.Service.Infrastructure;
using Microsoft.AspNetCore.Connections;

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
        try
        {
            await using var service = WebService.Create(settings);
            Greet(service.Services.GetRequiredService<DataFolder>());
            foreach (var line in service.Services.GetRequiredService<Database>().Mended)
                Console.WriteLine(line);
            await StartAsync(service);
            await service.WaitForShutdownAsync();
            return 0;
        }
        catch (Exception cause) when (cause is DataFolderInUseException or UnusableSettingException)
        {
            await Console.Error.WriteLineAsync(cause.Message);
            return CommandInput.Refused;
        }
    }

    private static void Greet(DataFolder folder)
    {
        Console.WriteLine($"The data folder is {folder.Root}.");
        if (folder.LeftBeside is { } beside)
            Console.WriteLine($"An earlier version left its data in {beside}, which cleaning a build deletes. To go on with them, stop, and copy that folder's files into {folder.Root}.");
    }

    /// <exception cref="UnusableSettingException">The address cannot be listened on.</exception>
    private static async Task StartAsync(WebApplication service)
    {
        var quiet = service.Services.GetRequiredService<QuietStart>();
        try
        {
            await service.StartAsync();
        }
        catch (IOException cause) when (cause.InnerException is AddressInUseException)
        {
            throw new UnusableSettingException($"{cause.Message.TrimEnd('.')}. Stop the program that listens there, or set ASPNETCORE_URLS to another port, such as http://localhost:5001.");
        }
        catch (SocketException cause)
        {
            throw new UnusableSettingException($"The address to listen on cannot be used: {cause.Message}. Set ASPNETCORE_URLS to another, such as http://localhost:5001.");
        }

        quiet.IsOver = true;
    }
}
