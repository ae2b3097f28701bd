using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>The K index: how likely showers and thunder are without a front.</summary>
public static class KIndex
{
    /// <summary>(T850 − T500) + T_d850 − (T700 − T_d700), °C; null where the ascent lacks one of them.</summary>
    /// <remarks>[FAA-13A] chapter 9, with its table of meanings. Null also when 850 hPa lies below the ground.</remarks>
    public static double? Of(Profile profile)
    {
        var p850 = Pressure.FromHectopascals(850);
        var p700 = Pressure.FromHectopascals(700);
        return profile.TemperatureAt(p850) is { } t850
            && profile.DewPointAt(p850) is { } d850
            && profile.TemperatureAt(p700) is { } t700
            && profile.DewPointAt(p700) is { } d700
            && profile.TemperatureAt(Pressure.FromHectopascals(500)) is { } t500
                ? t850.Celsius - t500.Celsius + d850.Celsius - (t700.Celsius - d700.Celsius)
                : null;
    }
}
