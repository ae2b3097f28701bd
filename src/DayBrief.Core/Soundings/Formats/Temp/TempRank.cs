namespace DayBrief.Soundings.Formats.Temp;

/// <summary>Which of two groups at one pressure is believed: the standard level, then the tropopause and the strongest
/// wind, then significant levels, then significant winds and PILOT.</summary>
internal static class TempRank
{
    public const int Standard = 0;
    public const int Special = 1;
    public const int Significant = 2;
    public const int Wind = 3;
    public const int Pilot = 4;
}
