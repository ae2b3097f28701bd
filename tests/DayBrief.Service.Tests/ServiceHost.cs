using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace DayBrief.Service;

/// <summary>The whole service in memory, with a data folder of its own that goes when the tests have run.</summary>
public sealed class ServiceHost : IAsyncDisposable
{
    private readonly string _data = Directory.CreateTempSubdirectory("daybrief-test-").FullName;
    private readonly IReadOnlyDictionary<string, string> _settings;
    private readonly TimeProvider? _clock;
    private WebApplicationFactory<Program> _factory;

    public ServiceHost()
        : this(new Dictionary<string, string>(), null)
    {
    }

    private ServiceHost(IReadOnlyDictionary<string, string> settings, TimeProvider? clock)
    {
        (_settings, _clock) = (settings, clock);
        _factory = Start();
    }

    /// <summary>Where a browser finds it; another place after a restart.</summary>
    public Uri Address => _factory.ClientOptions.BaseAddress;

    /// <summary>What the service has logged since its start.</summary>
    internal KeptLog Log { get; private set; } = new();

    /// <summary>A service with settings of its own, as the environment would give them, or another clock.</summary>
    internal static ServiceHost With(TimeProvider? clock = null, params (string Name, string Value)[] settings) =>
        new(settings.ToDictionary(setting => setting.Name, setting => setting.Value), clock);

    /// <summary>A client that shows redirections instead of following them, and keeps cookies.</summary>
    public HttpClient Client() => new(new HttpClientHandler { AllowAutoRedirect = false }) { BaseAddress = Address };

    /// <summary>One of the service's own parts.</summary>
    internal T Get<T>()
        where T : notnull => _factory.Services.GetRequiredService<T>();

    /// <summary>Stops the service and starts it again on the same data folder.</summary>
    public async Task RestartAsync()
    {
        await _factory.DisposeAsync();
        _factory = Start();
    }

    public async ValueTask DisposeAsync()
    {
        await _factory.DisposeAsync();
        Directory.Delete(_data, recursive: true);
    }

    private WebApplicationFactory<Program> Start()
    {
        Log = new();
        var factory = new WebApplicationFactory<Program>().WithWebHostBuilder(host =>
        {
            host.UseSetting("DAYBRIEF_DATA", _data).UseSetting("urls", "http://127.0.0.1:0");
            foreach (var (name, value) in _settings)
                host.UseSetting(name, value);
            host.ConfigureTestServices(services =>
            {
                services.AddSingleton<ILoggerProvider>(Log);
                if (_clock is not null)
                    services.AddSingleton(_clock);
            });
        });
        factory.UseKestrel(0);
        factory.StartServer();
        return factory;
    }
}
