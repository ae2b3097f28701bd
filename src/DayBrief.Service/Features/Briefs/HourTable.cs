using DayBrief.Days;

namespace DayBrief.Service.Features.Briefs;

/// <summary>One line of the day through its hours, as text; a dash where there is nothing.</summary>
internal sealed record HourRow(string Time, string Temperature, string Top, string CloudBase, string Climb);

internal static class HourTable
{
    private const string Nothing = "–";

    /// <summary>Every full hour from an hour before the first usable thermal to the last; empty without thermals.</summary>
    public static IReadOnlyList<HourRow> Rows(Brief brief, Reader reader) =>
        brief.Day.Times is { FirstUsable: { } first, Last: { } last }
            ? [.. brief.Day.Steps
                .Where(step => step.Time.Minute == 0 && step.Time >= first.AddHours(-1) && step.Time <= last.AddHours(1))
                .Select(step => Row(step, reader))]
            : [];

    private static HourRow Row(DayStep step, Reader reader) => new(
        reader.Time(step.Time),
        step.SurfaceTemperatureC is { } celsius ? Math.Round(celsius).ToString("0", System.Globalization.CultureInfo.InvariantCulture) : Nothing,
        step.UsableTopAglM is { } top ? reader.HeightNumber(top) : Nothing,
        step.CloudBaseAglM is { } cloudBase ? reader.HeightNumber(cloudBase) : Nothing,
        step.ClimbMs is > 0 and { } climb ? reader.ClimbNumber(climb) : Nothing);
}
