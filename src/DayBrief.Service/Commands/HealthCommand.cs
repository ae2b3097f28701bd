using System.CommandLine;

namespace DayBrief.Service.Commands;

/// <summary>Asks the running service whether it is well, for a container that has no other program to ask with.</summary>
internal static class HealthCommand
{
    public static Command Create()
    {
        var command = new Command("health", "Ask the service at ASPNETCORE_URLS (default http://localhost:5000) whether it is ready; exit code 0 if it is.");
        command.SetAction((_, stopping) => RunAsync(stopping));
        return command;
    }

    private static async Task<int> RunAsync(CancellationToken stopping)
    {
        var url = (Environment.GetEnvironmentVariable("ASPNETCORE_URLS") ?? "http://localhost:5000").Split(';')[0]
            .Replace("://+", "://localhost", StringComparison.Ordinal)
            .Replace("://*", "://localhost", StringComparison.Ordinal)
            .Replace("://0.0.0.0", "://localhost", StringComparison.Ordinal);
        using var client = new HttpClient { Timeout = TimeSpan.FromSeconds(4) };
        try
        {
            using var answer = await client.GetAsync(new Uri(new Uri(url), "/health/ready"), stopping);
            return answer.IsSuccessStatusCode ? 0 : CommandInput.Refused;
        }
        catch (Exception unreachable) when (unreachable is HttpRequestException or TaskCanceledException)
        {
            return CommandInput.Refused;
        }
    }
}
