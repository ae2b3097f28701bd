using System.Collections.Immutable;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>What of a computed day an observer on the ground can check: the screen temperature through the day and the trigger.</summary>
/// <param name="Screen">Screen temperatures in order of time.</param>
/// <param name="TriggerTemperature">Screen temperature at which thermals become usable.</param>
/// <param name="TriggerTime">When it is reached; null when the computed day does not reach it.</param>
/// <param name="Last">Last usable thermal; null without any.</param>
public sealed record DayCourse(
    ImmutableArray<TimedTemperature> Screen, Temperature? TriggerTemperature, DateTimeOffset? TriggerTime, DateTimeOffset? Last)
{
    /// <summary>Of a computed day.</summary>
    public static DayCourse Of(ConvectiveDay day) => new(
        [.. day.Steps.Where(step => step.SurfaceTemperatureC is not null).Select(step => new TimedTemperature(step.Time, Temperature.FromCelsius(step.SurfaceTemperatureC!.Value)))],
        day.Times.TriggerTemperature,
        day.Times.TriggerTime,
        day.Times.Last);

    /// <summary>The computed temperature at a moment, linear between steps; null outside them.</summary>
    public Temperature? At(DateTimeOffset moment)
    {
        for (var i = 1; i < Screen.Length; i++)
        {
            var (before, after) = (Screen[i - 1], Screen[i]);
            if (moment >= before.Time && moment <= after.Time)
            {
                var share = (moment - before.Time) / (after.Time - before.Time);
                return before.Temperature + TemperatureDifference.FromKelvins(share * (after.Temperature - before.Temperature).Kelvins);
            }
        }

        return null;
    }
}

/// <summary>A temperature at a moment.</summary>
/// <param name="Time">When.</param>
/// <param name="Temperature">How warm.</param>
public readonly record struct TimedTemperature(DateTimeOffset Time, Temperature Temperature);
