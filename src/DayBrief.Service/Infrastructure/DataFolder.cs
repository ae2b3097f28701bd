namespace DayBrief.Service.Infrastructure;

/// <summary>The folder that holds all the service keeps; created on first start.</summary>
internal sealed class DataFolder
{
    public const string Variable = "DAYBRIEF_DATA";

    public DataFolder(string? path)
    {
        Root = Path.GetFullPath(string.IsNullOrWhiteSpace(path) ? Path.Combine(AppContext.BaseDirectory, "data") : path);
        Directory.CreateDirectory(Root);
    }

    public string Root { get; }

    public string DatabasePath => Path.Combine(Root, "daybrief.db");

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
