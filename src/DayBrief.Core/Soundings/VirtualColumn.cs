using DayBrief.Thermodynamics;

namespace DayBrief.Soundings;

/// <summary>The virtual temperature of an ascent, asked from the ground upwards: each layer is found by going on from the one before.</summary>
internal sealed class VirtualColumn
{
    private readonly double[] _logHpa;
    private readonly double[] _kelvins;
    private readonly double[] _moistLogHpa;
    private readonly double[] _dewPointCelsius;
    private int _layer;
    private int _moistLayer;

    public VirtualColumn(Profile profile)
    {
        _logHpa = Logarithms(profile.Hpa);
        _kelvins = profile.Kelvins.ToArray();
        _moistLogHpa = Logarithms(profile.MoistHpa);
        _dewPointCelsius = profile.DewPointCelsius.ToArray();
    }

    /// <summary>At a pressure not above the one asked before; the temperature itself above the highest dew point.</summary>
    /// <param name="at">Logarithm of the pressure in hPa.</param>
    /// <param name="hpa">The pressure.</param>
    public double KelvinsAt(double at, double hpa)
    {
        var kelvins = Between(_logHpa, _kelvins, at, ref _layer);
        return _moistLogHpa.Length > 1 && at >= _moistLogHpa[^1]
            ? Humidity.VirtualKelvins(kelvins, Humidity.MixingRatioKgKg(Between(_moistLogHpa, _dewPointCelsius, at, ref _moistLayer), hpa))
            : kelvins;
    }

    private static double Between(double[] logHpa, double[] values, double at, ref int layer)
    {
        while (layer < logHpa.Length - 2 && logHpa[layer + 1] > at)
            layer++;
        var share = (logHpa[layer] - at) / (logHpa[layer] - logHpa[layer + 1]);
        return values[layer] + (share * (values[layer + 1] - values[layer]));
    }

    private static double[] Logarithms(ReadOnlySpan<double> hpa)
    {
        var logarithms = new double[hpa.Length];
        for (var i = 0; i < hpa.Length; i++)
            logarithms[i] = Math.Log(hpa[i]);
        return logarithms;
    }
}
