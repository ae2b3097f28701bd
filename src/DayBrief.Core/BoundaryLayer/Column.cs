namespace DayBrief.BoundaryLayer;

/// <summary>The air above a site at the start of the heating: potential temperature and mixing ratio, linear in height
/// between levels, with their integrals from the ground.</summary>
internal sealed class Column
{
    private readonly double[] _z;
    private readonly double[] _theta;
    private readonly double[] _q;
    private readonly double[] _thetaSum;
    private readonly double[] _qSum;
    private int _layer;

    /// <param name="heightM">Heights above ground, m, from 0, not falling; an equal pair is a jump.</param>
    /// <param name="theta">Potential temperature, K.</param>
    /// <param name="q">Mixing ratio, kg/kg.</param>
    public Column(double[] heightM, double[] theta, double[] q)
    {
        (_z, _theta, _q) = (heightM, theta, q);
        _thetaSum = Cumulative(heightM, theta);
        _qSum = Cumulative(heightM, q);
    }

    /// <summary>Height to which the column is known, m.</summary>
    public double TopM => _z[^1];

    /// <summary>The same column with other potential temperatures and mixing ratios.</summary>
    public Column With(Func<double, double> warmingAt, double moistureFactor)
    {
        var theta = new double[_z.Length];
        var q = new double[_z.Length];
        for (var i = 0; i < _z.Length; i++)
        {
            theta[i] = _theta[i] + warmingAt(_z[i]);
            q[i] = _q[i] * moistureFactor;
        }

        return new(_z, theta, q);
    }

    /// <summary>Values at a height, just above it where it is a jump, and integrals from the ground to it.</summary>
    public ColumnValue At(double heightM)
    {
        var i = Layer(heightM);
        var dz = heightM - _z[i];
        var share = dz / (_z[i + 1] - _z[i]);
        var theta = _theta[i] + (share * (_theta[i + 1] - _theta[i]));
        var q = _q[i] + (share * (_q[i + 1] - _q[i]));
        return new(
            theta, q, _thetaSum[i] + (dz * (_theta[i] + theta) / 2), _qSum[i] + (dz * (_q[i] + q) / 2));
    }

    /// <summary>The layer a height lies in. The mixed layer's top moves little between calls: start from the last one.</summary>
    private int Layer(double heightM)
    {
        while (_layer < _z.Length - 2 && heightM >= _z[_layer + 1])
            _layer++;
        while (_layer > 0 && heightM < _z[_layer])
            _layer--;
        return _layer;
    }

    private static double[] Cumulative(double[] z, double[] values)
    {
        var sum = new double[z.Length];
        for (var i = 1; i < z.Length; i++)
            sum[i] = sum[i - 1] + ((z[i] - z[i - 1]) * (values[i] + values[i - 1]) / 2);
        return sum;
    }
}

/// <summary>A column at one height.</summary>
/// <param name="Theta">Potential temperature, K.</param>
/// <param name="Q">Mixing ratio, kg/kg.</param>
/// <param name="ThetaSum">∫θ dz from the ground, K m.</param>
/// <param name="QSum">∫q dz from the ground, m kg/kg.</param>
internal readonly record struct ColumnValue(double Theta, double Q, double ThetaSum, double QSum);
