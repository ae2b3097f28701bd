namespace DayBrief.BoundaryLayer;

/// <summary>The air above a site at the start of the heating: potential temperature and mixing ratio, linear in height
/// between levels, with their integrals from the ground.</summary>
internal sealed class Column
{
    private static readonly double[] ChillLevels = [0.25, 0.5, 1, 1.5, 2, 3, 4, 6];

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

    /// <summary>The same column with other potential temperatures and mixing ratios, by height.</summary>
    public Column Changed(Func<double, double> theta, Func<double, double> q) =>
        new(_z, [.. _z.Select((z, i) => _theta[i] + theta(z))], [.. _z.Select((z, i) => Math.Max(0, _q[i] + q(z)))]);

    /// <summary>The same column after heat was lost at the ground, most of it at the ground itself: falling off as e^(−z/scale).</summary>
    /// <param name="kelvinMetres">What was lost, K m.</param>
    /// <param name="scaleM">Height over which it falls to a third.</param>
    public Column Chilled(double kelvinMetres, double scaleM)
    {
        double[] heights = [.. _z, .. ChillLevels.Where(z => z * scaleM < TopM && Array.IndexOf(_z, z * scaleM) < 0).Select(z => z * scaleM)];
        Array.Sort(heights);
        var (theta, q, shape) = (new double[heights.Length], new double[heights.Length], new double[heights.Length]);
        for (var i = 0; i < heights.Length; i++)
        {
            var (at, above) = (heights[i], i + 1 < heights.Length && heights[i + 1] == heights[i]);
            var value = above ? JustBelow(at) : At(Math.Min(at, TopM));
            (theta[i], q[i], shape[i]) = (value.Theta, value.Q, Math.Exp(-at / scaleM));
        }

        var lost = kelvinMetres / Cumulative(heights, shape)[^1];
        for (var i = 0; i < heights.Length; i++)
            theta[i] -= lost * shape[i];
        return new(heights, theta, q);
    }

    private ColumnValue JustBelow(double heightM)
    {
        var i = Array.IndexOf(_z, heightM);
        return new(_theta[i], _q[i], 0, 0);
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
