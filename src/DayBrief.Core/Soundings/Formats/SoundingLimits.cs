namespace DayBrief.Soundings.Formats;

/// <summary>How much one input may hold. Far above any real ascent (a two-second ascent has about 3,000 levels), and
/// small enough that reading stays a matter of a second.</summary>
internal static class SoundingLimits
{
    public const int Bytes = 10 * 1024 * 1024;

    public const int Levels = 20_000;

    /// <summary>Fewer levels cannot show an inversion; common practice, no source.</summary>
    public const int FewestLevels = 6;

    /// <summary>Fewer temperatures than this among them are a wind report; common practice, no source.</summary>
    public const int FewestTemperatures = 4;
}
