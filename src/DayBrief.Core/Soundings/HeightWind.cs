using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>A wind reported by height instead of pressure (WMO FM 32 in regions that use fixed heights).</summary>
/// <param name="Height">Height above mean sea level.</param>
/// <param name="Wind">The wind there.</param>
public readonly record struct HeightWind(Altitude Height, Wind Wind);
