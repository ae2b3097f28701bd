using Microsoft.AspNetCore.Mvc.Testing;

namespace DayBrief.Service;

/// <summary>The whole service in memory, with a data folder of its own that goes when the tests have run.</summary>
public sealed class ServiceHost : IAsyncDisposable
{
    private readonly string _data = Directory.CreateTempSubdirectory("daybrief-test-").FullName;
    private readonly WebApplicationFactory<Program> _factory;

    public ServiceHost() => _factory = new WebApplicationFactory<Program>()
        .WithWebHostBuilder(host => host.UseSetting("DAYBRIEF_DATA", _data));

    public HttpClient Client() => _factory.CreateClient(new() { AllowAutoRedirect = false });

    public async ValueTask DisposeAsync()
    {
        await _factory.DisposeAsync();
        Directory.Delete(_data, recursive: true);
    }
}
