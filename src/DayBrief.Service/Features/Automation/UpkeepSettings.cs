using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Automation;

/// <summary>How long an installation keeps things, and where it puts its backups.</summary>
internal sealed class UpkeepSettings
{
    public UpkeepSettings(IConfiguration configuration, DataFolder data)
    {
        var backup = configuration.GetSection("DayBrief:Backup");
        var keep = configuration.GetSection("DayBrief:Keep");
        BackupFolder = backup["Folder"] is { Length: > 0 } folder ? Path.GetFullPath(folder) : Path.Combine(data.Root, "backups");
        BackupAt = TimeOnly.TryParseExact(backup["AtUtc"], "HH:mm", out var at) ? at : new(2, 30);
        Backups = Days(backup, "Keep", 14) ?? 14;
        DraftDays = Days(keep, "DraftDays", 60);
        SoundingDays = Days(keep, "SoundingDays", 90);
        ReportDays = Days(keep, "ReportDays", 60);
        RunDays = Days(keep, "RunDays", 60);
        SignedDays = Days(keep, "SignedDays", null);
    }

    public string BackupFolder { get; }

    /// <summary>UTC; what is too old is removed half an hour later, so that the last backup still has it.</summary>
    public TimeOnly BackupAt { get; }

    public TimeOnly PurgeAt => BackupAt.AddMinutes(30);

    /// <summary>How many backups are kept.</summary>
    public int Backups { get; }

    /// <summary>Drafts that were never signed; null keeps them for ever, here as below.</summary>
    public int? DraftDays { get; }

    /// <summary>Ascents that no brief refers to.</summary>
    public int? SoundingDays { get; }

    /// <summary>Reports, flags and reminders.</summary>
    public int? ReportDays { get; }

    /// <summary>What the ledger of runs remembers.</summary>
    public int? RunDays { get; }

    /// <summary>Signed briefs with their ascents and files: for ever unless an administrator says otherwise.</summary>
    public int? SignedDays { get; }

    private static int? Days(IConfigurationSection section, string name, int? otherwise) =>
        section.GetValue<int?>(name) switch
        {
            null => otherwise,
            > 0 and var days => days,
            _ => null,
        };
}
