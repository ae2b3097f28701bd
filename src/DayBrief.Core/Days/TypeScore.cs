using DayBrief.Updrafts;

namespace DayBrief.Days;

/// <summary>How broad the thermals of a course are at its strongest time, from what was computed: a smooth number.</summary>
/// <param name="RadiusM">Radius of the picked thermal at 0.4 of the depth.</param>
/// <param name="TurnoverMin">Time in which the layer's air turns over, z_i/w*.</param>
/// <param name="LiftMin">Sun that lifts the top by 100 m: heat needed against heat supplied.</param>
/// <param name="CloudDepthM">Depth of the cumulus; 0 without.</param>
/// <remarks>Each number speaks from −1 (short-lived) to 1 (broad), in a straight line between its two bounds; their mean decides,
/// but a picked thermal of 300 m (a layer some 1650 m deep) or cloud of 2000 m is broad by itself. The bounds are common practice
/// without source, except the turnover (typical 9 to 15 min, [Deardorff1970]) and the radius [Allen2006].</remarks>
internal readonly record struct TypeScore(double RadiusM, double TurnoverMin, double LiftMin, double CloudDepthM)
{
    private const double StoppedMinutes = 600;

    /// <summary>Below 0 short-lived, from 0 on broad; NaN without usable thermals.</summary>
    public double Broadness => double.IsNaN(RadiusM)
        ? double.NaN
        : Math.Max((Radius + Turnover + Lift + Cloud) / 4, Math.Max(Between(RadiusM, 280, 320), Between(CloudDepthM, 1500, 2500)));

    public double Radius => Between(RadiusM, 150, 350);

    public double Turnover => Between(TurnoverMin, 9, 14);

    public double Lift => -Between(LiftMin, 20, 40);

    public double Cloud => Between(CloudDepthM, -500, 1500);

    public static TypeScore Of(DayTrack track, Headline headline, double cloudDepthM)
    {
        var at = headline.Strongest;
        if (at < 0)
            return new(double.NaN, double.NaN, double.NaN, cloudDepthM);
        var (depth, wStar) = (track.DepthM[at], track.WStar[at]);
        return new(PickedUpdraft.FullRadiusM(depth), depth / wStar / 60, MinutesPer100M(track, at), cloudDepthM);
    }

    /// <summary>Minutes of the sun at that time of day that lift the top by 100 m: from the growth half an hour around it.</summary>
    private static double MinutesPer100M(DayTrack track, int at)
    {
        var (from, to) = (at, at);
        while (from > 0 && from > at - 6 && double.IsFinite(track.DepthM[from - 1]))
            from--;
        while (to < track.DepthM.Length - 1 && to < at + 6 && double.IsFinite(track.DepthM[to + 1]))
            to++;
        var risen = track.DepthM[to] - track.DepthM[from];
        return risen > 1 ? Math.Min(StoppedMinutes, 100 / risen * (to - from) * DayFrame.StepSeconds / 60) : StoppedMinutes;
    }

    private static double Between(double value, double low, double high) =>
        Math.Clamp((2 * (value - low) / (high - low)) - 1, -1, 1);
}
