namespace DayBrief.BoundaryLayer;

/// <summary>How the air of an ascent lies over a site that is higher or lower than the ascent's own ground: the one place where
/// heights of the ascent become heights over the site.</summary>
/// <remarks>Air near the ground follows small steps of the ground, as the night's cold air hugs it; far above, and for large
/// differences, heights above the sea stay what they are. z_ascent = z + r (1 − w e^(−z/250 m)), w = 1/(1 + (r/100 m)⁴), r the
/// site's height above the ascent's lowest level. Smooth in r and z; the three numbers are choices.</remarks>
/// <param name="RiseM">r, m.</param>
internal readonly record struct GroundShift(double RiseM)
{
    private const double HugM = 250;
    private const double SameM = 100;

    /// <summary>Height of the site's ground air in the ascent, m above its lowest level; negative below it.</summary>
    public double GroundM => RiseM * (1 - Weight);

    private double Weight => 1 / (1 + Math.Pow(RiseM / SameM, 4));

    /// <summary>Height above the site of what the ascent has at a height; negative for what lies below the site's ground.</summary>
    public double Over(double ascentM)
    {
        if (RiseM == 0 || ascentM <= GroundM)
            return ascentM - GroundM;
        var (hugged, z) = (RiseM * Weight, Math.Max(0, ascentM - RiseM));
        for (var i = 0; i < 8; i++)
        {
            var near = hugged * Math.Exp(-z / HugM);
            var step = (z + RiseM - near - ascentM) / (1 + (near / HugM));
            z = Math.Max(0, z - step);
            if (Math.Abs(step) < 1e-6)
                break;
        }

        return z;
    }
}
