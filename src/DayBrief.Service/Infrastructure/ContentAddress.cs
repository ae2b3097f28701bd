using System.Collections.Concurrent;
using System.Security.Cryptography;

namespace DayBrief.Service.Infrastructure;

/// <summary>Files of <c>wwwroot</c> by an address that changes with their content, so that a browser may keep them for ever.</summary>
internal static class ContentAddress
{
    /// <summary>The query parameter that carries the content's hash.</summary>
    public const string Parameter = "v";

    private static readonly ConcurrentDictionary<string, string> Known = new();

    /// <summary>Such as <c>/daybrief.css?v=3f0c9a51</c>.</summary>
    public static string Of(string path) => $"{path}?{Parameter}={Known.GetOrAdd(path, HashOf)}";

    private static string HashOf(string path) => Convert.ToHexStringLower(SHA256.HashData(
        File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "wwwroot", path.TrimStart('/')))))[..8];
}
