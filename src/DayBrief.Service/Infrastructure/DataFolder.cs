namespace DayBrief.Service.Infrastructure;

/// <summary>The folder that holds all the service keeps; created on first start.</summary>
internal sealed class DataFolder
{
    public const string Variable = "DAYBRIEF_DATA";

    private const string Store = "daybrief.db";

    /// <exception cref="UnusableSettingException">There is no folder to use: it cannot be made, or the account has none of its own.</exception>
    public DataFolder(string? path)
    {
        Root = PathFor(path);
        try
        {
            if (OperatingSystem.IsWindows())
                Directory.CreateDirectory(Root);
            else if (!Directory.Exists(Root))
                Directory.CreateDirectory(Root, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
        catch (Exception cause) when (cause is IOException or UnauthorizedAccessException)
        {
            throw new UnusableSettingException($"The data folder {Root} cannot be made: {cause.Message} Set {Variable} to a folder that may be written to.");
        }
    }

    /// <summary>The folder that a setting means.</summary>
    public static string PathFor(string? setting) => Path.GetFullPath(string.IsNullOrWhiteSpace(setting) ? OfThisAccount() : setting);

    /// <summary>The account's own place for programs' data, which no build makes or cleans; where that is unset (a service
    /// account without a home), there is no default that would last.</summary>
    private static string OfThisAccount() =>
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify) is { Length: > 0 } own
            ? Path.Combine(own, "DayBrief")
            : throw new UnusableSettingException($"This account has no folder of its own for data. Set {Variable} to the folder that keeps it.");

    public string Root { get; }

    public string DatabasePath => Path.Combine(Root, Store);

    /// <summary>A store that an earlier version left beside the program, where cleaning a build deletes it, while this folder has none.</summary>
    public string? LeftBeside =>
        !File.Exists(DatabasePath) && Path.Combine(AppContext.BaseDirectory, "data") is var beside && File.Exists(Path.Combine(beside, Store)) ? beside : null;

    /// <summary>Holds the folder for this process.</summary>
    /// <exception cref="DataFolderInUseException">Another process holds it.</exception>
    public FileStream LockOrThrow()
    {
        try
        {
            return new FileStream(Path.Combine(Root, "daybrief.lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException cause)
        {
            throw new DataFolderInUseException(
                $"Another DayBrief uses the data folder {Root}. Stop it, or set {Variable} to another folder.", cause);
        }
    }
}

/// <summary>The data folder is held by another process.</summary>
internal sealed class DataFolderInUseException(string message, Exception cause) : Exception(message, cause);
