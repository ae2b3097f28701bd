using System.Globalization;
using System.Text.RegularExpressions;
using DayBrief.Service;
using DayBrief.Service.Infrastructure;
using Microsoft.AspNetCore.Builder;

namespace DayBrief.Benchmarks;

/// <summary>The whole service on loopback with a data folder of its own, and a client that sends the desk's fields as its script does.</summary>
internal sealed partial class DeskClient : IAsyncDisposable
{
    private readonly string _data;
    private readonly WebApplication _service;
    private readonly HttpClient _client;
    private readonly Dictionary<string, string> _fields;
    private string _action = "/briefs";

    private DeskClient(string data, WebApplication service, string ascent)
    {
        (_data, _service) = (data, service);
        _client = new() { BaseAddress = new(service.Urls.First()) };
        _fields = new()
        {
            ["version"] = "0",
            ["text"] = ascent,
            ["site"] = "harrowmere",
            ["date"] = "2026-05-21",
            ["maxTemperatureC"] = "17",
        };
    }

    public static async Task<DeskClient> StartAsync(string ascent)
    {
        var data = Directory.CreateTempSubdirectory("daybrief-bench-").FullName;
        var service = WebService.Create([$"--{DataFolder.Variable}={data}", "--urls=http://127.0.0.1:0", "--Logging:LogLevel:Default=Warning"]);
        await service.StartAsync();
        var client = new DeskClient(data, service, ascent);
        client._fields["__RequestVerificationToken"] = Token().Match(await client._client.GetStringAsync("/briefs/new")).Groups[1].Value;
        return client;
    }

    /// <summary>Changes one field and waits for what comes of it.</summary>
    /// <returns>Length of the answer.</returns>
    public async Task<int> ChangeAsync(string field, IFormattable value)
    {
        _fields[field] = value.ToString(null, CultureInfo.InvariantCulture);
        using var request = new HttpRequestMessage(HttpMethod.Post, _action) { Content = new FormUrlEncodedContent(_fields) };
        request.Headers.Add("X-Desk", "live");
        using var answer = await _client.SendAsync(request);
        var text = await answer.EnsureSuccessStatusCode().Content.ReadAsStringAsync();
        if (!text.Contains("data-usable=\"yes\"", StringComparison.Ordinal))
            throw new InvalidOperationException(text);
        (_action, _fields["version"]) = ($"/desk/{Id().Match(text).Groups[1].Value}", Version().Match(text).Groups[1].Value);
        return text.Length;
    }

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        await _service.StopAsync();
        await _service.DisposeAsync();
        Directory.Delete(_data, recursive: true);
    }

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"([^\"]+)")]
    private static partial Regex Token();

    [GeneratedRegex("data-id=\"([^\"]+)")]
    private static partial Regex Id();

    [GeneratedRegex("data-version=\"([^\"]+)")]
    private static partial Regex Version();
}
