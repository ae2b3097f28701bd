using System.Collections.Concurrent;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace DayBrief.Service.Features.Sending.Webhooks;

/// <summary>A real HTTP server on loopback that keeps what is posted, and answers as a test wants.</summary>
internal sealed class WebhookReceiver : IAsyncDisposable
{
    private readonly WebApplication _app;
    private readonly ConcurrentQueue<Post> _posts = new();

    private WebhookReceiver(WebApplication app) => _app = app;

    public IReadOnlyList<Post> Posts => [.. _posts];

    public Uri Address => new(_app.Urls.First());

    /// <summary>As the administrator of an installation would allow it.</summary>
    public (string Name, string Value) Allowed => ("DayBrief:Fetch:AllowedHosts:0", Address.Authority);

    /// <param name="answer">The answer to the first, second … post.</param>
    public static async Task<WebhookReceiver> StartAsync(Func<int, HttpContext, Task> answer)
    {
        var app = WebApplication.CreateSlimBuilder().Build();
        app.Urls.Add("http://127.0.0.1:0");
        var receiver = new WebhookReceiver(app);
        app.Run(async context =>
        {
            using var reader = new StreamReader(context.Request.Body);
            var headers = context.Request.Headers.ToDictionary(header => header.Key.ToLowerInvariant(), header => header.Value.ToString());
            receiver._posts.Enqueue(new(context.Request.Method, context.Request.Path, headers, await reader.ReadToEndAsync(context.RequestAborted)));
            await answer(receiver._posts.Count, context);
        });
        await app.StartAsync();
        return receiver;
    }

    public static Task<WebhookReceiver> StartAsync(params int[] statuses) => StartAsync((post, context) =>
    {
        context.Response.StatusCode = statuses[Math.Min(post, statuses.Length) - 1];
        return Task.CompletedTask;
    });

    public Uri At(string path) => new(Address, path);

    public async ValueTask DisposeAsync()
    {
        await _app.StopAsync();
        await _app.DisposeAsync();
    }

    internal sealed record Post(string Method, string Path, IReadOnlyDictionary<string, string> Headers, string Body);
}
