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
