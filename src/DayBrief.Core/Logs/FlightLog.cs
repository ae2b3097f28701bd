using System.Collections.Immutable;

namespace DayBrief.Logs;

/// <summary>What a flight recorder wrote, without names and registrations.</summary>
public sealed record FlightLog
{
    /// <summary>The recorder's maker, three characters; null when the file does not begin with it. Never its serial number.</summary>
    public string? Recorder { get; init; }

    /// <summary>UTC date of the first fix; null when the file states none.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>All positions in the order of the file whose time does not go back, the first of each second.</summary>
    public ImmutableArray<Fix> Fixes { get; init; } = [];

    /// <summary>How many position records could be read, those with repeated or backward time included.</summary>
    public int Records { get; init; }

    /// <summary>What was found wrong or strange.</summary>
    public ImmutableArray<LogRemark> Remarks { get; init; } = [];

    /// <summary>Pressure where the recorder has it at all.</summary>
    public HeightSource HeightFrom => Fixes.Any(static fix => fix.PressureHeightM != 0) ? HeightSource.Pressure : HeightSource.Gnss;

    /// <summary>Median time between fixes, s; 0 with fewer than two.</summary>
    public double IntervalS
    {
        get
        {
            if (Fixes.Length < 2)
                return 0;
            var steps = new double[Fixes.Length - 1];
            for (var i = 0; i < steps.Length; i++)
                steps[i] = Fixes[i + 1].Seconds - Fixes[i].Seconds;
            Array.Sort(steps);
            return steps[steps.Length / 2];
        }
    }

    /// <summary>A moment of the log; null when the file states no date.</summary>
    public DateTimeOffset? At(double seconds) =>
        Date is { } date ? new DateTimeOffset(date.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero).AddSeconds(seconds) : null;
}
