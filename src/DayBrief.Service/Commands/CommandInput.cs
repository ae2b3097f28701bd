using System.CommandLine;
using System.Text.Json;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;
using Microsoft.AspNetCore.Mvc;

namespace DayBrief.Service.Commands;

/// <summary>Inputs named on the command line, and what happens when one is refused.</summary>
internal static class CommandInput
{
    public const int Refused = 1;

    public const int Usage = 2;

    private const string StandardInput = "-";

    /// <summary>A folder stands for all files in it and in its folders, in order of their names; hidden ones apart.</summary>
    /// <exception cref="InvalidInputException">The folder holds no file.</exception>
    public static IReadOnlyList<string> Expand(string path)
    {
        if (!Directory.Exists(path))
            return [path];
        var every = new EnumerationOptions { RecurseSubdirectories = true, IgnoreInaccessible = true, AttributesToSkip = FileAttributes.Hidden | FileAttributes.System };
        string[] files = [.. Directory.EnumerateFiles(path, "*", every).Order(StringComparer.Ordinal)];
        return files.Length > 0 ? files : throw InvalidInputException.Field("PATH", $"The folder {path} holds no file.");
    }

    public static bool IsFolder(string path) => Directory.Exists(path);

    public static string NameOf(string path) => path == StandardInput ? "standard input" : Path.GetFileName(path);

    public static async Task<byte[]> ReadAsync(string path, CancellationToken stopping)
    {
        if (path != StandardInput)
        {
            return File.Exists(path)
                ? await File.ReadAllBytesAsync(path, stopping)
                : throw InvalidInputException.Field("PATH", $"There is no file {path}.");
        }

        using var buffer = new MemoryStream();
        await Console.OpenStandardInput().CopyToAsync(buffer, stopping);
        return buffer.ToArray();
    }

    /// <summary>Runs, and prints problem details to standard error when the input is refused.</summary>
    /// <returns>The exit code.</returns>
    public static async Task<int> RefusableAsync(ParseResult parsed, string? input, Func<Task> run)
    {
        try
        {
            await run();
            return 0;
        }
        catch (InvalidSoundingException refused)
        {
            return await RefuseAsync(parsed, Problem.Of(refused, input));
        }
        catch (InvalidInputException refused)
        {
            return await RefuseAsync(parsed, Problem.Of(refused));
        }
    }

    private static async Task<int> RefuseAsync(ParseResult parsed, ProblemDetails problem)
    {
        await parsed.InvocationConfiguration.Error.WriteLineAsync(JsonSerializer.Serialize(problem, Json.Line));
        return Refused;
    }
}
