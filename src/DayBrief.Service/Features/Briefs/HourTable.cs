using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>One line of the day through its hours, as text; a dash where there is nothing or nothing is known.</summary>
internal sealed record HourRow(string Time, string Temperature, string Top, string CloudBase, string Climb)
{
    /// <summary>Wind across the runway in use, with gusts.</summary>
    public required string Across { get; init; }

    /// <summary>The runway in use.</summary>
    public required string Runway { get; init; }

    /// <summary>When.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>A moment lies in its hour.</summary>
    public bool Holds(DateTimeOffset moment) => moment >= At && moment < At.AddHours(1);
}

internal static class HourTable
{
    public const string Nothing = "–";

    /// <summary>Every full hour from an hour before the first usable thermal to the last; empty without thermals.</summary>
    public static IReadOnlyList<HourRow> Rows(MadeBrief made, Reader reader) =>
        made.Brief.Day.Times is { FirstUsable: { } first, Last: { } last } ? Between(made, reader, first.AddHours(-1), last.AddHours(1)) : [];

    /// <summary>For the launch point, which also needs the wind on the runway: the whole day where there are no thermals.</summary>
    public static IReadOnlyList<HourRow> OfTheSheet(MadeBrief made, Reader reader)
    {
        if (Rows(made, reader) is { Count: > 0 } rows)
            return rows;
        var noon = made.Brief.Day.Sun.Noon;
        return Between(made, reader, noon.AddHours(-5), noon.AddHours(6));
    }

    private static HourRow[] Between(MadeBrief made, Reader reader, DateTimeOffset from, DateTimeOffset to) =>
    [
        .. made.Brief.Day.Steps.Where(step => step.Time.Minute == 0 && step.Time >= from && step.Time <= to).Select(step => Row(made, step, reader)),
    ];

    private static HourRow Row(MadeBrief made, DayStep step, Reader reader)
    {
        var usable = DayFigures.UsableTopAt(made.Brief, step);
        var runway = RunwayHour.At(made.Brief, step.Time, made.Inputs.RunwayInUse);
        return new(
            reader.Time(step.Time),
            step.SurfaceTemperatureC is { } celsius ? Reader.TemperatureNumber(celsius) : Nothing,
            usable is { } top ? reader.HeightNumber(top) : Nothing,
            step.CloudBaseAglM is { } cloudBase ? reader.HeightNumber(cloudBase) : Nothing,
            usable is not null && step.ClimbMs is > 0 and { } climb ? reader.ClimbNumber(climb) : Nothing)
        {
            Across = runway is { } wind ? reader.WindNumber(wind.Across) : Nothing,
            Runway = runway?.Runway.Designator ?? Nothing,
            At = step.Time,
        };
    }
}
