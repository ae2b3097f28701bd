using System.Runtime.CompilerServices;

namespace DayBrief.House;

/// <summary>Finds the checkout that this test was compiled from, and the shared reference data where they lie beside it.</summary>
internal static class Repository
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Here(), "..", "..", ".."));

    public static string Core => Path.Combine(Root, "src", "DayBrief.Core");

    public static string Service => Path.Combine(Root, "src", "DayBrief.Service");

    /// <summary>A path in the reference data; skips the test, saying why, where a clone has none.</summary>
    public static string Shared(params string[] parts)
    {
        var path = Path.Combine([Root, "..", "shared", .. parts]);
        Assert.SkipUnless(Path.Exists(path), $"The reference data (shared/{string.Join('/', parts)}) are not beside this clone.");
        return path;
    }

    public static IEnumerable<string> SourceFiles(string folder, params string[] extensions) =>
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Where(file => extensions.Contains(Path.GetExtension(file)) && !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}"))
            .Order(StringComparer.Ordinal);

    private static string Here([CallerFilePath] string path = "") => Path.GetDirectoryName(path)!;
}
