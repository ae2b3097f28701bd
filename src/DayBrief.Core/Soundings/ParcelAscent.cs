using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Soundings;

/// <summary>A surface parcel followed up the ascent: its buoyancy on a fine grid in ln p.</summary>
internal sealed class ParcelAscent
{
    private readonly double _step;
    private readonly double[] _excessKelvins;
    private readonly int _condensation;

    private ParcelAscent(double step, double[] excessKelvins, int condensation)
    {
        _step = step;
        _excessKelvins = excessKelvins;
        _condensation = condensation;
    }

    /// <summary>The stretch at or above the LCL in which the parcel is warmer and gains most; null if there is none.</summary>
    public (int From, int To)? MainFloatingLayer
    {
        get
        {
            (int From, int To)? best = null;
            for (var i = _condensation; i < _excessKelvins.Length; i++)
            {
                var from = i;
                while (i < _excessKelvins.Length && _excessKelvins[i] > 0)
                    i++;
                if (i > from && (best is null || Work(from, i - 1) > Work(best.Value.From, best.Value.To)))
                    best = (from, i - 1);
            }

            return best;
        }
    }

    /// <summary>Index of the highest point at which the parcel is warmer.</summary>
    public int NeutralIndex => Math.Max(0, Array.FindLastIndex(_excessKelvins, excess => excess > 0));

    public static ParcelAscent Of(Profile profile, Temperature temperature, Temperature dewPoint, double step)
    {
        var surfaceHpa = profile.SurfacePressure.Hectopascals;
        var w = Humidity.MixingRatioKgKg(dewPoint.Celsius, surfaceHpa);
        var (lclHpa, lclKelvins) = LiftedCondensation.Solve(surfaceHpa, temperature.Kelvins, dewPoint.Celsius);
        var (logSurface, logLcl) = (Math.Log(surfaceHpa), Math.Log(lclHpa));
        var count = (int)((logSurface - Math.Log(profile.TopPressure.Hectopascals)) / step) + 1;
        var excess = new double[count];
        var condensation = count;
        var moist = new MoistPath(lclHpa, lclKelvins);
        var environment = new VirtualColumn(profile);

        // Equal steps in ln p are equal factors of pressure, and of temperature along the dry adiabat.
        var (hpa, dryKelvins) = (surfaceHpa, temperature.Kelvins);
        var (down, cooler) = (Math.Exp(-step), Math.Exp(-step * Air.Kappa));
        for (var i = 0; i < count; i++)
        {
            var at = logSurface - (i * step);
            double parcel;
            if (at > logLcl)
            {
                parcel = Humidity.VirtualKelvins(dryKelvins, w);
            }
            else
            {
                condensation = Math.Min(condensation, i);
                var kelvins = moist.KelvinsAt(at);
                parcel = Humidity.VirtualKelvins(kelvins, Humidity.MixingRatioKgKg(kelvins - Temperature.ZeroCelsius, hpa));
            }

            excess[i] = parcel - environment.KelvinsAt(at, hpa);
            hpa *= down;
            dryKelvins *= cooler;
        }

        return new(step, excess, condensation);
    }

    /// <summary>R_d ∫ excess d ln p between two grid points, J kg⁻¹, trapezoids.</summary>
    public double Work(int from, int to)
    {
        var sum = 0.0;
        for (var i = from; i < to; i++)
            sum += (_excessKelvins[i] + _excessKelvins[i + 1]) / 2 * _step;
        return Air.GasConstant * sum;
    }

    /// <summary>The negative part of <see cref="Work"/>, J kg⁻¹.</summary>
    public double NegativeWork(int from, int to)
    {
        var sum = 0.0;
        for (var i = from; i < to; i++)
            sum += Math.Min(0, (_excessKelvins[i] + _excessKelvins[i + 1]) / 2) * _step;
        return Air.GasConstant * sum;
    }
}
