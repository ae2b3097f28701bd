namespace DayBrief.Service.Features.Automation;

/// <summary>What the automation says in the log.</summary>
internal static class AutomationLog
{
    public static readonly Action<ILogger, string, string, Exception?> Flagged =
        LoggerMessage.Define<string, string>(LogLevel.Information, new(1, nameof(Flagged)), "Flag for {Site}: {Text}");

    public static readonly Action<ILogger, string, DateOnly, Exception?> NotSigned =
        LoggerMessage.Define<string, DateOnly>(LogLevel.Warning, new(2, nameof(NotSigned)), "The brief of {Site} for {Date} is not signed yet");

    public static readonly Action<ILogger, string, string, Exception?> Ended =
        LoggerMessage.Define<string, string>(LogLevel.Information, new(3, nameof(Ended)), "{Run}: {Result}");

    public static readonly Action<ILogger, string, string, Exception?> Failed =
        LoggerMessage.Define<string, string>(LogLevel.Warning, new(4, nameof(Failed)), "{Run}: {Result}");

    public static readonly Action<ILogger, string, Exception?> Broke =
        LoggerMessage.Define<string>(LogLevel.Error, new(5, nameof(Broke)), "{Run} broke");
}
