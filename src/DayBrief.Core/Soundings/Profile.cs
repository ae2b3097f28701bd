using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>The temperature and moisture of one ascent as a continuous column, from the ground to 100 hPa.</summary>
/// <remarks>Temperature, height and dew point are linear in ln p between levels; heights come from the hypsometric
/// equation with the mean virtual temperature of each layer (temperature itself where the dew point is missing).</remarks>
public sealed class Profile
{
    private const double TopHpa = 100;

    private readonly double[] _hpa;
    private readonly double[] _kelvins;
    private readonly double[] _heightAglM;
    private readonly double[] _moistHpa;
    private readonly double[] _dewPointCelsius;

    private Profile(IReadOnlyList<SoundingLevel> levels, Altitude? elevation)
    {
        _hpa = [.. levels.Select(level => level.Pressure.Hectopascals)];
        _kelvins = [.. levels.Select(level => level.Temperature!.Value.Kelvins)];
        var moist = levels.Where(level => level.DewPoint is not null).ToArray();
        _moistHpa = [.. moist.Select(level => level.Pressure.Hectopascals)];
        _dewPointCelsius = [.. moist.Select(level => level.DewPoint!.Value.Celsius)];
        var virtualKelvins = levels.Select(VirtualKelvins).ToArray();
        _heightAglM = new double[_hpa.Length];
        for (var i = 1; i < _hpa.Length; i++)
        {
            _heightAglM[i] = _heightAglM[i - 1]
                + Hypsometry.ThicknessM(_hpa[i - 1], _hpa[i], (virtualKelvins[i - 1] + virtualKelvins[i]) / 2);
        }

        SurfaceDewPoint = levels[0].DewPoint;
        Elevation = elevation ?? ElevationFromHeights(levels);
    }

    /// <summary>Height of the surface level above mean sea level; null when nothing tells it.</summary>
    public Altitude? Elevation { get; }

    /// <summary>Pressure of the surface level.</summary>
    public Pressure SurfacePressure => Pressure.FromHectopascals(_hpa[0]);

    /// <summary>Temperature of the surface level.</summary>
    public Temperature SurfaceTemperature => Temperature.FromKelvins(_kelvins[0]);

    /// <summary>Dew point of the surface level, if it was reported.</summary>
    public Temperature? SurfaceDewPoint { get; }

    /// <summary>Pressure of the highest level used.</summary>
    public Pressure TopPressure => Pressure.FromHectopascals(_hpa[^1]);

    /// <summary>Height of the highest level used.</summary>
    public Height Top => Height.FromMetres(_heightAglM[^1]);

    /// <summary>Pressures of the levels with a temperature, hPa, falling.</summary>
    internal ReadOnlySpan<double> Hpa => _hpa;

    /// <summary>Temperatures at <see cref="Hpa"/>, K.</summary>
    internal ReadOnlySpan<double> Kelvins => _kelvins;

    /// <summary>Heights above the surface level at <see cref="Hpa"/>, m.</summary>
    internal ReadOnlySpan<double> HeightAglM => _heightAglM;

    /// <summary>Pressures of the levels that also have a dew point, hPa, falling.</summary>
    internal ReadOnlySpan<double> MoistHpa => _moistHpa;

    /// <summary>Dew points at <see cref="MoistHpa"/>, °C.</summary>
    internal ReadOnlySpan<double> DewPointCelsius => _dewPointCelsius;

    /// <summary>The column of an ascent.</summary>
    /// <param name="sounding">The ascent.</param>
    /// <param name="elevation">Height of its surface level; when null, that of its source, else of its surface level,
    /// else worked back hypsometrically from the lowest reported height.</param>
    public static Profile Of(Sounding sounding, Altitude? elevation = null)
    {
        var usable = sounding.Levels
            .Where(level => level.Temperature is not null && level.Pressure.Hectopascals >= TopHpa)
            .ToArray();
        return new Profile(
            usable.Length >= 2 ? usable : [.. sounding.Levels.Where(level => level.Temperature is not null)],
            elevation ?? sounding.Source.Elevation ?? sounding.Surface.Height);
    }

    /// <summary>Temperature at a pressure; null outside the ascent.</summary>
    public Temperature? TemperatureAt(Pressure pressure) =>
        Inside(pressure.Hectopascals) ? Temperature.FromKelvins(KelvinsAt(pressure.Hectopascals)) : null;

    /// <summary>Dew point at a pressure; null outside the levels that report one.</summary>
    public Temperature? DewPointAt(Pressure pressure) =>
        _moistHpa.Length > 0 && pressure.Hectopascals <= _moistHpa[0] && pressure.Hectopascals >= _moistHpa[^1]
            ? Temperature.FromCelsius(DewPointCelsiusAt(pressure.Hectopascals))
            : null;

    /// <summary>Height of a pressure above the surface level; null outside the ascent.</summary>
    public Height? HeightAt(Pressure pressure) =>
        Inside(pressure.Hectopascals) ? Height.FromMetres(HeightAglMAt(pressure.Hectopascals)) : null;

    /// <summary>Pressure at a height above the surface level; null outside the ascent.</summary>
    public Pressure? PressureAt(Height height) =>
        height.Metres >= 0 && height.Metres <= _heightAglM[^1]
            ? Pressure.FromHectopascals(HpaAtHeight(height.Metres))
            : null;

    internal bool Inside(double hpa) => hpa <= _hpa[0] && hpa >= _hpa[^1];

    internal double KelvinsAt(double hpa) => LogPressure.Interpolate(_hpa, _kelvins, hpa);

    internal double HeightAglMAt(double hpa) => LogPressure.Interpolate(_hpa, _heightAglM, hpa);

    internal double DewPointCelsiusAt(double hpa) => LogPressure.Interpolate(_moistHpa, _dewPointCelsius, hpa);

    internal double HpaAtHeight(double metres)
    {
        var i = LogPressure.LayerByRising(_heightAglM, metres);
        var share = (metres - _heightAglM[i]) / (_heightAglM[i + 1] - _heightAglM[i]);
        return _hpa[i] * Math.Pow(_hpa[i + 1] / _hpa[i], share);
    }

    private static double VirtualKelvins(SoundingLevel level) =>
        level.DewPoint is { } dewPoint
            ? Humidity.VirtualKelvins(
                level.Temperature!.Value.Kelvins,
                Humidity.MixingRatioKgKg(dewPoint.Celsius, level.Pressure.Hectopascals))
            : level.Temperature!.Value.Kelvins;

    private Altitude? ElevationFromHeights(IReadOnlyList<SoundingLevel> levels)
    {
        for (var i = 0; i < levels.Count; i++)
        {
            if (levels[i].Height is { } height)
                return Altitude.FromMetres(height.Metres - _heightAglM[i]);
        }

        return null;
    }
}
