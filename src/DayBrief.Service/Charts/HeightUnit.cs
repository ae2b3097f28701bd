using System.Globalization;

namespace DayBrief.Service.Charts;

/// <summary>The unit in which a reader wants heights.</summary>
internal enum HeightUnit
{
    Feet,
    Metres,
}

/// <summary>Heights as a reader wants them. Kernels keep metres.</summary>
internal static class HeightUnits
{
    private const double MetresPerFoot = 0.3048;

    public static string Name(this HeightUnit unit) => unit == HeightUnit.Feet ? "ft" : "m";

    public static double FromMetres(this HeightUnit unit, double metres) =>
        unit == HeightUnit.Feet ? metres / MetresPerFoot : metres;

    public static double ToMetres(this HeightUnit unit, double value) =>
        unit == HeightUnit.Feet ? value * MetresPerFoot : value;

    /// <summary>The figure alone, to the nearest 100 ft or 50 m: no forecast height is known better.</summary>
    public static string Figure(this HeightUnit unit, double metres)
    {
        var step = unit == HeightUnit.Feet ? 100 : 50;
        return (Math.Round(unit.FromMetres(metres) / step) * step).ToString("N0", CultureInfo.InvariantCulture);
    }

    /// <summary>The figure with its unit.</summary>
    public static string Text(this HeightUnit unit, double metres) => $"{unit.Figure(metres)} {unit.Name()}";

    /// <summary>A vertical speed as readers of this unit want it: knots with feet, m/s with metres.</summary>
    public static string Vertical(this HeightUnit unit, double metresPerSecond, string format = "0.0") =>
        $"{unit.VerticalFigure(metresPerSecond, format)} {(unit == HeightUnit.Feet ? "kt" : "m/s")}";

    /// <summary>The figure of a vertical speed alone.</summary>
    public static string VerticalFigure(this HeightUnit unit, double metresPerSecond, string format = "0.0") =>
        (unit == HeightUnit.Feet ? Units.Speed.FromMetresPerSecond(metresPerSecond).Knots : metresPerSecond)
            .ToString(format, CultureInfo.InvariantCulture).Replace('-', '−');

    /// <summary>Round heights in metres for an axis, from 0 up to a top, at most so many steps.</summary>
    public static IEnumerable<double> Ticks(this HeightUnit unit, double topMetres, int most)
    {
        var top = unit.FromMetres(topMetres);
        var step = Array.Find(Steps, candidate => top / candidate <= most);
        step = step > 0 ? step : Steps[^1];
        for (var i = 0; i * step <= top; i++)
            yield return unit.ToMetres(i * step);
    }

    private static readonly double[] Steps = [100, 200, 250, 500, 1000, 2000, 2500, 5000, 10000, 20000];
}
