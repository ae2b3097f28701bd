using MathNet.Numerics.Interpolation;

namespace DayBrief.Numerics;

/// <summary>A natural cubic spline through measured points: twice continuously differentiable.</summary>
internal sealed class SmoothCurve
{
    private readonly CubicSpline _spline;

    /// <summary>Through points whose abscissae rise strictly; at least two.</summary>
    public SmoothCurve(double[] at, double[] values) => _spline = CubicSpline.InterpolateNaturalSorted(at, values);

    public double At(double t) => _spline.Interpolate(t);

    public double SlopeAt(double t) => _spline.Differentiate(t);
}
