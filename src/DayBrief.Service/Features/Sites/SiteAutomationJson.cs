using System.Globalization;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Sites;

/// <summary>What a site has done by itself, and when (local times as "HH:mm"). Everything is optional; nothing set, nothing done.</summary>
public sealed record SiteAutomationJson
{
    /// <summary>Where the ascent is fetched: an address with places as <see cref="AddressTemplate"/> says.</summary>
    public string? SoundingAddress { get; init; }

    /// <summary>What stands for {station} in the ascent's address.</summary>
    public string? Station { get; init; }

    /// <summary>Hour of the wanted ascent, UTC; 0 when not said.</summary>
    public int? SoundingHourUtc { get; init; }

    public string? SoundingAt { get; init; }

    public string? DraftAt { get; init; }

    public string? RemindAt { get; init; }

    public string? MetarAddress { get; init; }

    public string? TafAddress { get; init; }

    /// <summary>What stands for {station} in the reports' addresses, and whose reports are taken out of a bulletin.</summary>
    public string? ReportStation { get; init; }

    /// <summary>Height of the reporting station; its temperatures are brought dry-adiabatically to the field.</summary>
    public double? ReportElevationM { get; init; }

    public int? ReportsEveryMinutes { get; init; }

    public string? ReportsFrom { get; init; }

    public string? ReportsTo { get; init; }

    internal const int UsualMinutes = 30;

    internal TimeOnly? SoundingTime => Time(SoundingAt);

    internal TimeOnly? DraftTime => Time(DraftAt);

    internal TimeOnly? RemindTime => Time(RemindAt);

    internal TimeOnly ReportsStart => Time(ReportsFrom) ?? new(7, 0);

    internal TimeOnly ReportsEnd => Time(ReportsTo) ?? new(20, 0);

    internal bool FetchesReports => MetarAddress is not null || TafAddress is not null;

    /// <summary>Tells everything that cannot be used.</summary>
    internal void Check(FieldErrors errors)
    {
        CheckAddress(errors, "soundingAddress", SoundingAddress);
        CheckAddress(errors, "metarAddress", MetarAddress);
        CheckAddress(errors, "tafAddress", TafAddress);
        CheckTime(errors, "soundingAt", SoundingAt);
        CheckTime(errors, "draftAt", DraftAt);
        CheckTime(errors, "remindAt", RemindAt);
        CheckTime(errors, "reportsFrom", ReportsFrom);
        CheckTime(errors, "reportsTo", ReportsTo);
        errors.Optional("automation.soundingHourUtc", SoundingHourUtc);
        errors.Optional("automation.reportsEveryMinutes", ReportsEveryMinutes);
        errors.Optional("automation.reportElevationM", ReportElevationM);
        if (SoundingAt is not null && SoundingAddress is null)
            errors.Add("automation.soundingAddress", "An address is needed to fetch the ascent at that time.");
        if (SoundingAddress is not null && SoundingAt is null)
            errors.Add("automation.soundingAt", "A time is needed at which the ascent is fetched, such as 06:10.");
        if (FetchesReports && ReportsEnd <= ReportsStart)
            errors.Add("automation.reportsTo", "The reports must end later than they begin.");
    }

    internal static TimeOnly? Time(string? text) =>
        TimeOnly.TryParseExact(text, ["HH:mm", "H:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time) ? time : null;

    private static void CheckTime(FieldErrors errors, string field, string? text)
    {
        if (text is not null && Time(text) is null)
            errors.Add($"automation.{field}", "Give a local time as 06:10.");
    }

    private static void CheckAddress(FieldErrors errors, string field, string? template)
    {
        if (template is not null && AddressTemplate.Fault(template) is { } fault)
            errors.Add($"automation.{field}", fault);
    }
}
