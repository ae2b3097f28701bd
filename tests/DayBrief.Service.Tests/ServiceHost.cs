using Microsoft.AspNetCore.Mvc.Testing;

namespace DayBrief.Service;

/// <summary>The whole service in memory, with a data folder of its own that goes when the tests have run.</summary>
public sealed class ServiceHost : IAsyncDisposable
{
    private readonly string _data = Directory.CreateTempSubdirectory("daybrief-test-").FullName;
    private readonly WebApplicationFactory<Program> _factory;

    public ServiceHost()
    {
        _factory = new WebApplicationFactory<Program>()
            .WithWebHostBuilder(host => host.UseSetting("DAYBRIEF_DATA", _data));
        _factory.UseKestrel(0);
        _factory.StartServer();
    }

    /// <summary>Where a browser finds it.</summary>
    public Uri Address => _factory.ClientOptions.BaseAddress;

    public HttpClient Client() => _factory.CreateClient(new() { AllowAutoRedirect = false });

    public async ValueTask DisposeAsync()
    {
        await _factory.DisposeAsync();
        Directory.Delete(_data, recursive: true);
    }
}
