using DayBrief.Thermodynamics;

namespace DayBrief.Soundings.Formats;

/// <summary>Dew point from whatever measure of moisture a level holds.</summary>
internal static class Moisture
{
    /// <summary>Dew point from relative humidity over water, [Bolton1980] eqs. 10 and 11; 100 % and more is saturation.
    /// Null for dry air, which has none.</summary>
    /// <exception cref="InvalidSoundingException">Below 0 or above 110 %.</exception>
    public static double? FromRelative(double? celsius, double? percent, Origin origin) => (celsius, percent) switch
    {
        (null, _) or (_, null) => null,
        (_, < 0 or > 110) => throw origin.Refuse("humidity-impossible", $"a relative humidity of {percent:0.#} % is not possible."),
        ( < -120 or > 65, _) or (_, < 0.01) => null,
        ({ } t, { } rh) => rh >= 100 ? t : Saturation.DewPointCelsius(rh / 100 * Saturation.OverWaterHpa(t)),
    };

    /// <summary>Dew point from mixing ratio or specific humidity (kg/kg) and pressure [AMS].</summary>
    /// <exception cref="InvalidSoundingException">Below 0 or above 100 g/kg.</exception>
    public static double? FromMixing(double? mixingRatio, double? specificHumidity, double? hectopascals, Origin origin)
    {
        var ratio = mixingRatio ?? (specificHumidity / (1 - specificHumidity));
        return (ratio, hectopascals) switch
        {
            (null, _) or (_, null) => null,
            ( < 0 or > 0.1, _) => throw origin.Refuse("humidity-impossible", $"{1000 * ratio:0.#} g/kg of water vapour is not possible."),
            ( < 1e-9, _) or (_, <= 0) => null,
            ({ } w, { } p) => Humidity.DewPointCelsius(w, p),
        };
    }
}
