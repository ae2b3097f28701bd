using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>Where a temperature and a pressure lie on a tephigram.</summary>
/// <remarks>[AMS] "tephigram": temperature and the logarithm of potential temperature at right angles. The second axis
/// is T₀ ln(θ/T₀) with T₀ = 0 °C, and the whole is turned by 45°; then isobars lie level at 0 °C, isotherms rise to the
/// right, dry adiabats to the left, and equal areas are equal energies.</remarks>
/// <param name="size">Drawing units for one kelvin.</param>
/// <param name="x">Page position of the point 0 °C, 1000 hPa.</param>
/// <param name="y">The same downwards.</param>
internal sealed class TephigramScale(double size, double x, double y)
{
    private const double T0 = Temperature.ZeroCelsius;

    private static readonly double Diagonal = Math.Sqrt(2);

    /// <summary>Right and up from the point 0 °C, 1000 hPa, in kelvins.</summary>
    public static (double Right, double Up) Turned(double celsius, double hpa)
    {
        var entropy = (T0 * Math.Log((celsius + T0) / T0)) + (T0 * Air.Kappa * Math.Log(1000 / hpa));
        return ((celsius + entropy) / Diagonal, (entropy - celsius) / Diagonal);
    }

    public Point At(double celsius, double hpa)
    {
        var (right, up) = Turned(celsius, hpa);
        return new(x + (size * right), y - (size * up));
    }

    public (double Celsius, double Hpa) Back(Point point)
    {
        var (right, up) = ((point.X - x) / size, (y - point.Y) / size);
        var celsius = (right - up) / Diagonal;
        var entropy = (right + up) / Diagonal;
        var lnPressure = ((T0 * Math.Log((celsius + T0) / T0)) - entropy) / (T0 * Air.Kappa);
        return (celsius, 1000 * Math.Exp(lnPressure));
    }

    /// <summary>The point of an isobar at a page position across; isobars rise steadily with temperature across.</summary>
    public Point OnIsobar(double hpa, double across)
    {
        var (cold, warm) = (-150.0, 150.0);
        while (warm - cold > 1e-6)
        {
            var middle = (cold + warm) / 2;
            if (At(middle, hpa).X < across)
                cold = middle;
            else
                warm = middle;
        }

        return At(cold, hpa);
    }
}
