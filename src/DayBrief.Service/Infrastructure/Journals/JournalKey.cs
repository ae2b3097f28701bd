using System.Security.Cryptography;
using System.Text;

namespace DayBrief.Service.Infrastructure.Journals;

/// <summary>What seals the journal: a secret of the environment, kept apart from the data; else one drawn on first start, beside them.</summary>
internal sealed class JournalKey
{
    public const string Setting = "DAYBRIEF_SEAL_KEY";

    private const int LeastLength = 32;

    /// <exception cref="UnusableSettingException">The secret is too short.</exception>
    public JournalKey(DataFolder folder, string? secret)
    {
        if (!string.IsNullOrEmpty(secret))
        {
            if (secret.Length < LeastLength)
                throw new UnusableSettingException($"{Setting} has {secret.Length} characters; it needs {LeastLength} or more.");
            (Bytes, IsApart) = (SHA256.HashData(Encoding.UTF8.GetBytes(secret)), true);
            return;
        }

        var path = Path.Combine(Directory.CreateDirectory(Path.Combine(folder.Root, "keys")).FullName, "seal.key");
        if (!File.Exists(path))
            Draw(path);
        Bytes = File.ReadAllBytes(path);
    }

    public byte[] Bytes { get; }

    /// <summary>Whoever can write the data folder need not know it.</summary>
    public bool IsApart { get; }

    private static void Draw(string path)
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        using var file = new FileStream(path, options);
        file.Write(RandomNumberGenerator.GetBytes(32));
        file.Flush(flushToDisk: true);
    }
}
