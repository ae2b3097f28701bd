using DayBrief.Soundings.Formats;
using DayBrief.Units;

namespace DayBrief.Soundings.Quality;

/// <summary>What the analysis of a full ascent tells, to see whether a thinned one tells the same.</summary>
internal sealed class ThinningCheck
{
    /// <summary>0.1 hPa and 0.02 °C: what the coded forms of an ascent round to or less [WMO306].</summary>
    private const double PressureHpa = 0.1;
    private const double TemperatureK = 0.02;
    private const double HeightM = 2;

    /// <summary>Warmings of the surface whose dry tops are compared, °C.</summary>
    private static readonly double[] Warmings = [1, 3, 6, 9, 12, 15];

    private static readonly double[] StandardHpa = [925, 850, 700, 500];

    private readonly List<ReadLevel> _levels;
    private readonly Temperature[] _temperatures;
    private readonly SoundingAnalysis _full;

    public ThinningCheck(List<ReadLevel> levels)
    {
        _levels = levels;
        var surface = levels.First(level => level.TemperatureC is not null).TemperatureC!.Value;
        _temperatures = [.. Warmings.Select(warming => Temperature.FromCelsius(surface + warming))];
        _full = Analysis(levels);
    }

    /// <summary>The levels on both sides of everything that the analysis names.</summary>
    public HashSet<ReadLevel> Landmarks()
    {
        var profile = _full.Profile;
        double?[] named =
        [
            _full.ConvectiveCondensation?.Pressure.Hectopascals,
            profile.SurfacePressure.Hectopascals - 50,
            .. StandardHpa.Cast<double?>(),
            .. _full.DryTops.Select(top => top.Top?.Pressure.Hectopascals),
            .. _full.FreezingLevels.Select(height => profile.PressureAt(height)?.Hectopascals),
            .. _full.Inversions.SelectMany(inversion => new double?[] { inversion.BasePressure.Hectopascals, inversion.TopPressure.Hectopascals }),
        ];
        // Means and sums are taken by trapezoids in pressure, which need points also along a straight line in its logarithm.
        var surface = profile.SurfacePressure.Hectopascals;
        var regular = Enumerable.Range(1, 5).Select(i => surface - (10.0 * i))
            .Concat(Enumerable.Range(3, 40).Select(i => surface - (25.0 * i)).TakeWhile(hpa => hpa > 100));
        return [.. named.OfType<double>().SelectMany(Beside), .. regular.SelectMany(hpa => Beside(hpa).Take(1))];
    }

    /// <summary>Whether the analysis of fewer levels is the same within rounding.</summary>
    public bool IsKeptBy(List<ReadLevel> kept)
    {
        var thinned = Analysis(kept);
        return Same(_full.ConvectiveCondensation?.Pressure.Hectopascals, thinned.ConvectiveCondensation?.Pressure.Hectopascals, PressureHpa)
            && Same(_full.ConvectiveCondensation?.ConvectiveTemperature.Celsius, thinned.ConvectiveCondensation?.ConvectiveTemperature.Celsius, TemperatureK)
            && Same(_full.ConvectiveCondensation?.Height.Metres, thinned.ConvectiveCondensation?.Height.Metres, HeightM)
            && Same(_full.MixedParcel50?.Temperature.Celsius, thinned.MixedParcel50?.Temperature.Celsius, TemperatureK)
            && Same(_full.MixedParcel50?.DewPoint.Celsius, thinned.MixedParcel50?.DewPoint.Celsius, TemperatureK)
            && Same(_full.FreezingLevel?.Metres, thinned.FreezingLevel?.Metres, HeightM)
            && Same(_full.KIndex, thinned.KIndex, 5 * TemperatureK)
            && Same(_full.PrecipitableWaterMm, thinned.PrecipitableWaterMm, 0.01 * _full.PrecipitableWaterMm ?? 0)
            && Same(_full.Energy?.CapeJkg, thinned.Energy?.CapeJkg, 1 + (0.01 * _full.Energy?.CapeJkg ?? 0))
            && Same(_full.Energy?.CinJkg, thinned.Energy?.CinJkg, 1 - (0.01 * _full.Energy?.CinJkg ?? 0))
            && _full.DryTops.Zip(thinned.DryTops).All(pair =>
                Same(pair.First.Top?.Pressure.Hectopascals, pair.Second.Top?.Pressure.Hectopascals, PressureHpa));
    }

    private IEnumerable<ReadLevel> Beside(double hpa)
    {
        var above = _levels.FindIndex(level => level.TemperatureC is not null && level.PressureHpa <= hpa + 1e-9);
        var below = above > 0 ? _levels.FindLastIndex(above - 1, level => level.TemperatureC is not null) : -1;
        return new[] { above, below }.Where(index => index >= 0).Select(index => _levels[index]);
    }

    private static bool Same(double? full, double? thinned, double within) =>
        full is null == thinned is null && !(Math.Abs((full - thinned) ?? 0) > within);

    private SoundingAnalysis Analysis(List<ReadLevel> levels) => SoundingAnalysis.Of(
        new() { Source = new() { Format = "" }, Levels = [.. levels.Select(QualityControl.Level)] }, _temperatures);
}
