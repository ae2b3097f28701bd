namespace DayBrief.Scores;

/// <summary>How well one figure was told over many days.</summary>
/// <param name="N">Days on which it was told and came true.</param>
/// <param name="Bias">Mean of told minus true.</param>
/// <param name="Mae">Mean absolute error.</param>
/// <param name="ParcelMae">The same of the plain parcel method on the days on which it has a figure; null without any.</param>
/// <param name="ClimatologyMae">The same of the mean of all other days; null with fewer than two.</param>
/// <param name="InRangePct">Share of days whose truth lies inside the told range, per cent; null without ranges.</param>
/// <param name="Crps">Mean continuous ranked probability score.</param>
public sealed record Score(int N, double Bias, double Mae, double? ParcelMae, double? ClimatologyMae, double? InRangePct, double Crps)
{
    /// <summary>The score of pairs of told and true; null without any.</summary>
    public static Score? Of(IReadOnlyList<(Told Told, double True)> days)
    {
        ArgumentNullException.ThrowIfNull(days);
        if (days.Count == 0)
            return null;
        var parcel = days.Where(day => day.Told.Parcel is not null).ToArray();
        var ranged = days.Where(day => day.Told.Holds(day.True) is not null).ToArray();
        var sum = days.Sum(day => day.True);
        return new(
            days.Count,
            days.Average(day => day.Told.Value - day.True),
            days.Average(day => Math.Abs(day.Told.Value - day.True)),
            parcel.Length == 0 ? null : parcel.Average(day => Math.Abs(day.Told.Parcel!.Value - day.True)),
            days.Count < 2 ? null : days.Average(day => Math.Abs(((sum - day.True) / (days.Count - 1)) - day.True)),
            ranged.Length == 0 ? null : 100.0 * ranged.Count(day => day.Told.Holds(day.True) == true) / ranged.Length,
            days.Average(day => day.Told.Crps(day.True)));
    }
}
