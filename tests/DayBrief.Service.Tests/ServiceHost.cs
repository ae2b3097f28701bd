using System.Net;
using DayBrief.Service.Features.People;
using DayBrief.Service.Infrastructure;
using Hangfire.Logging;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace DayBrief.Service;

/// <summary>The whole service in memory, with a data folder of its own that goes when the tests have run.</summary>
public sealed class ServiceHost : IAsyncDisposable
{
    /// <summary>Of everybody whom <see cref="SignedInAsync"/> makes.</summary>
    internal const string Password = "four words in a row";

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
    public Uri Address => new(AddressesOf(_factory).First());

    /// <summary>Free bytes on its disk from the next start on; null for those there are.</summary>
    internal Func<long>? FreeSpace { get; set; }

    /// <summary>What the service has logged since its start.</summary>
    internal KeptLog Log { get; private set; } = new();

    /// <summary>A service with settings of its own, as the environment would give them, or another clock.</summary>
    internal static ServiceHost With(TimeProvider? clock = null, params (string Name, string Value)[] settings) =>
        new(settings.ToDictionary(setting => setting.Name, setting => setting.Value), clock);

    /// <summary>A client that shows redirections instead of following them, and keeps cookies.</summary>
    public HttpClient Client() => new(new HttpClientHandler { AllowAutoRedirect = false }) { BaseAddress = Address };

    /// <summary>A client of somebody signed in with that role. The trial of this host ends: take a host of the test's own.</summary>
    internal async Task<HttpClient> SignedInAsync(Role role, string? name = null)
    {
        name ??= $"Somebody {Guid.NewGuid():N}"[..20];
        var person = new NewPerson(name, null).Checked(role, Get<TimeProvider>().GetUtcNow());
        Get<PersonStore>().Add(person with { PasswordHash = Get<Passwords>().Hash(Password) });
        var client = Client();
        var answer = await client.SendFormAsync("/sign-in", "/sign-in", ("name", name), ("password", Password));
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        return client;
    }

    /// <summary>One of the service's own parts.</summary>
    internal T Get<T>()
        where T : notnull => _factory.Services.GetRequiredService<T>();

    /// <summary>Stops the service and starts it again on the same data folder.</summary>
    public async Task RestartAsync()
    {
        await StopAsync();
        _factory = Start();
    }

    public async ValueTask DisposeAsync()
    {
        await StopAsync();
        Directory.Delete(_data, recursive: true);
    }

    /// <summary>Jobs log through the service that started last in this process, whichever that is: forget one that is gone. The
    /// program ends on a thread of its own, and gives its folder free a little later.</summary>
    private async Task StopAsync()
    {
        await _factory.DisposeAsync();
        LogProvider.SetCurrentLogProvider(null);
        SpinWait.SpinUntil(IsFolderFree, Eventually.Limit);
    }

    private bool IsFolderFree()
    {
        try
        {
            new DataFolder(_data).LockOrThrow().Dispose();
            return true;
        }
        catch (DataFolderInUseException)
        {
            return false;
        }
    }

    private WebApplicationFactory<Program> Start()
    {
        Log = new();
        var factory = new WebApplicationFactory<Program>().WithWebHostBuilder(host =>
        {
            host.UseSetting("DAYBRIEF_DATA", _data).UseSetting("urls", "http://127.0.0.1:0");
            // Many sign-ins from one address are usual here.
            host.UseSetting(Attempts.Setting, "1000");
            foreach (var (name, value) in _settings)
                host.UseSetting(name, value);
            host.ConfigureTestServices(services =>
            {
                services.AddSingleton<ILoggerProvider>(Log);
                if (FreeSpace is { } free)
                    services.AddSingleton(new Room(free));
                if (_clock is not null)
                    services.AddSingleton(_clock);
            });
        });
        factory.UseKestrel(0);
        factory.StartServer();
        // On a busy machine the port may still be about to be bound.
        if (!SpinWait.SpinUntil(() => AddressesOf(factory).Any(address => !address.EndsWith(":0", StringComparison.Ordinal)), Eventually.Limit))
            throw new InvalidOperationException($"The service did not start:\n{string.Join('\n', Log.Lines)}");
        return factory;
    }

    private static ICollection<string> AddressesOf(WebApplicationFactory<Program> factory) =>
        factory.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses;
}
