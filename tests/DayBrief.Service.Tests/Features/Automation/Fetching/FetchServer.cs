using System.IO.Compression;
using System.Net.Sockets;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Connections.Features;
using Microsoft.AspNetCore.Http;

namespace DayBrief.Service.Features.Automation.Fetching;

/// <summary>A real HTTP server on loopback that behaves as badly as servers do.</summary>
internal sealed class FetchServer : IAsyncDisposable
{
    public const string Body = "this is what was asked for";

    private readonly WebApplication _app;
    private int _requests;

    private FetchServer(WebApplication app) => _app = app;

    /// <summary>Every request that reached it.</summary>
    public int Requests => _requests;

    public Uri Address => new(_app.Urls.First());

    /// <summary>What else it answers, by path; tests may change it while it runs.</summary>
    public Dictionary<string, string> Texts { get; } = [];

    public static async Task<FetchServer> StartAsync()
    {
        var app = WebApplication.CreateSlimBuilder().Build();
        app.Urls.Add("http://127.0.0.1:0");
        var server = new FetchServer(app);
        server.Map();
        await app.StartAsync();
        return server;
    }

    public Uri At(string path) => new(Address, path);

    public async ValueTask DisposeAsync()
    {
        await _app.StopAsync();
        await _app.DisposeAsync();
    }

    private void Map()
    {
        _app.Use((context, next) =>
        {
            Interlocked.Increment(ref _requests);
            return next(context);
        });
        _app.MapGet("/good", () => Body);
        _app.MapGet("/zipped", context => ZipAsync(context, System.Text.Encoding.UTF8.GetBytes(Body)));
        _app.MapGet("/bomb", context => ZipAsync(context, new byte[50_000_000]));
        _app.MapGet("/slow", DripAsync);
        _app.MapGet("/silent", SilentAsync);
        _app.MapGet("/broken", BreakAsync);
        _app.MapGet("/huge", HugeAsync);
        _app.MapGet("/fails/{times:int}", (int times) => _requests <= times ? Results.StatusCode(500) : Results.Text(Body));
        _app.MapGet("/missing", () => Results.NotFound());
        _app.MapGet("/busy/{seconds}", (string seconds, HttpContext context) => Busy(seconds, context));
        _app.MapGet("/chain/{left:int}", (int left) => left == 0 ? Results.Text(Body) : Results.Redirect($"/chain/{left - 1}"));
        _app.MapGet("/to", (string address) => Results.Redirect(address));
        _app.MapGet("/nowhere", () => Results.StatusCode(302));
        _app.MapGet("/{**path}", (HttpContext context) =>
            Texts.TryGetValue(context.Request.Path.Value!, out var text) ? Results.Text(text) : Results.NotFound());
    }

    private IResult Busy(string seconds, HttpContext context)
    {
        if (_requests > 1)
            return Results.Text(Body);
        context.Response.Headers.RetryAfter = seconds;
        return Results.StatusCode(429);
    }

    private static async Task ZipAsync(HttpContext context, byte[] content)
    {
        context.Response.Headers.ContentEncoding = "gzip";
        await using var zip = new GZipStream(context.Response.Body, CompressionLevel.SmallestSize);
        await zip.WriteAsync(content, context.RequestAborted);
    }

    private static async Task DripAsync(HttpContext context)
    {
        while (!context.RequestAborted.IsCancellationRequested)
        {
            await context.Response.WriteAsync(".", context.RequestAborted);
            await context.Response.Body.FlushAsync(context.RequestAborted);
            await Task.Delay(50, context.RequestAborted);
        }
    }

    private static async Task SilentAsync(HttpContext context)
    {
        await context.Response.WriteAsync("first", context.RequestAborted);
        await context.Response.Body.FlushAsync(context.RequestAborted);
        await Task.Delay(Timeout.Infinite, context.RequestAborted);
    }

    /// <summary>Past the web server, so that the head has left for certain before the line ends: a connection that never answered
    /// is another fault.</summary>
    private static async Task BreakAsync(HttpContext context)
    {
        var socket = context.Features.Get<IConnectionSocketFeature>()!.Socket;
        await socket.SendAsync("HTTP/1.1 200 OK\r\nContent-Length: 1000\r\n\r\nhalf"u8.ToArray(), context.RequestAborted);
        socket.Shutdown(SocketShutdown.Send);
        await Task.Delay(Timeout.Infinite, context.RequestAborted);
    }

    private static async Task HugeAsync(HttpContext context)
    {
        var chunk = new byte[65536];
        for (var i = 0; i < 400 && !context.RequestAborted.IsCancellationRequested; i++)
            await context.Response.Body.WriteAsync(chunk, context.RequestAborted);
    }
}
