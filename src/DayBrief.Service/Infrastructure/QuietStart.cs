namespace DayBrief.Service.Infrastructure;

/// <summary>While the service starts, host and server do not log that they failed: the verb says it in one line instead of two stacks.</summary>
internal sealed class QuietStart
{
    private static readonly string[] Speakers = ["Microsoft.Extensions.Hosting.Internal.Host", "Microsoft.AspNetCore.Server.Kestrel"];

    public QuietStart(ILoggingBuilder logging)
    {
        foreach (var speaker in Speakers)
            logging.AddFilter(speaker, level => IsOver && level >= LogLevel.Information);
    }

    /// <summary>The service has started; from now on everything is logged.</summary>
    public bool IsOver { get; set; }
}
