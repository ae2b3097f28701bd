using System.Net;
using System.Text;
using System.Text.Json;

namespace DayBrief.Service.Infrastructure;

/// <summary>Without room on the disk readers read on, writers are told why, and all goes on by itself when there is room.</summary>
[Collection(OneService.Name)]
public sealed class FullDiskTests : IAsyncLifetime
{
    private readonly ServiceHost _host = ServiceHost.With();
    private long _free = long.MaxValue;

    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync()
    {
        _host.FreeSpace = () => _free;
        return new(_host.RestartAsync());
    }

    public ValueTask DisposeAsync() => _host.DisposeAsync();

    [Fact]
    public async Task Readers_are_served_writers_told_and_it_heals_by_itself()
    {
        using var client = _host.Client();
        Assert.Equal(HttpStatusCode.OK, await ReadyAsync(client));
        _free = 20_000;
        foreach (var page in new[] { "/", "/briefs", "/briefs/demo-broad", "/briefs/demo-broad/sheet.pdf", "/api/v1/briefs/demo-broad", "/desk", "/health/live" })
            Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(page, Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, await ReadyAsync(client));
        var refused = await SendAsync(client);
        Assert.Equal(HttpStatusCode.InsufficientStorage, refused.StatusCode);
        var error = JsonDocument.Parse(await refused.Content.ReadAsStringAsync(Stopping)).RootElement.GetProperty("errors")[0];
        Assert.Equal("no-room", error.GetProperty("code").GetString());
        Assert.Contains("disk", error.GetProperty("detail").GetString(), StringComparison.Ordinal);

        _free = Room.Least;
        Assert.Equal(HttpStatusCode.Created, (await SendAsync(client)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, await ReadyAsync(client));
    }

    [Fact]
    public async Task A_start_on_a_full_disk_serves_reading()
    {
        _free = 0;
        await _host.RestartAsync();
        using var client = _host.Client();
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync("/", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.InsufficientStorage, (await SendAsync(client)).StatusCode);
    }

    /// <summary>The reserve is no promise: others fill disks too. A store that failed in the middle of a write is opened anew.</summary>
    [Fact]
    public async Task A_write_that_fails_at_the_disk_leaves_a_store_that_reads_and_writes()
    {
        var database = _host.Get<Database>();
        Assert.Throws<IOException>(() => database.Write("something", rows =>
        {
            rows.Insert(new LiteDB.BsonDocument { ["_id"] = 1 });
            throw new IOException("No space left on device");
        }));
        using var client = _host.Client();
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync("/", Stopping)).StatusCode);
        Assert.Equal(HttpStatusCode.Created, (await SendAsync(client)).StatusCode);
    }

    private static async Task<HttpStatusCode> ReadyAsync(HttpClient client) => (await client.GetAsync("/health/ready", Stopping)).StatusCode;

    private static async Task<HttpResponseMessage> SendAsync(HttpClient client)
    {
        using var content = new StringContent(Demo.Text("broad-post-frontal.txt"), Encoding.UTF8, "text/plain");
        return await client.PostAsync("/api/v1/soundings?name=" + Guid.NewGuid().ToString("N"), content, Stopping);
    }
}
