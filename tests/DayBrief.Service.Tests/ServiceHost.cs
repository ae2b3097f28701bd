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
            .WithWebHostBuilder(host => host.UseSetting("DAYBRIEF_DATA", _data).UseSetting("urls", "http://127.0.0.1:0"));
        _factory.UseKestrel(0);
        _factory.StartServer();
    }

    /// <summary>Where a browser finds it.</summary>
    public Uri Address => _factory.ClientOptions.BaseAddress;

    /// <summary>A client that shows redirections instead of following them.</summary>
    public HttpClient Client() => new(new HttpClientHandler { AllowAutoRedirect = false }) { BaseAddress = Address };

    public async ValueTask DisposeAsync()
    {
        await _factory.DisposeAsync();
        Directory.Delete(_data, recursive: true);
    }
}
