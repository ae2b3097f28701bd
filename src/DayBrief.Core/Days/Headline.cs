using DayBrief.BoundaryLayer;

namespace DayBrief.Days;

/// <summary>The figures of one course of a day that people ask for first. NaN and −1 are "none" inside the kernels.</summary>
internal sealed class Headline
{
    private const double BestShare = 0.8;
    private const double DeclineShare = 0.75;

    /// <summary>Share of thermals' tops with cloud from which there is "the first cumulus": half a per cent, about two of
    /// projected cover.</summary>
    public const double FirstCloudShare = 0.005;

    /// <summary>Share of cloudy updrafts from which thermals begin to reach beyond the layer towards a base that shows no cloud
    /// yet, or no more: a fifth of <see cref="FirstCloudShare"/>, a choice, so that the usable top has no step.</summary>
    private const double LeastShare = 0.001;

    private Headline(int steps) => (ClimbMs, CoreMs, UsableTopM) = (new double[steps], new double[steps], new double[steps]);

    public double[] ClimbMs { get; }

    public double[] CoreMs { get; }

    public double[] UsableTopM { get; }

    public int Trigger { get; private set; } = -1;

    public double TriggerKelvins { get; private set; } = double.NaN;

    public int FirstUsable { get; private set; } = -1;

    public int BestFrom { get; private set; } = -1;

    public int BestTo { get; private set; } = -1;

    public int Strongest { get; private set; } = -1;

    public int Decline { get; private set; } = -1;

    public int Last { get; private set; } = -1;

    public int FirstCloud { get; private set; } = -1;

    public double FirstCloudBaseM { get; private set; } = double.NaN;

    public double MaxDepthM { get; private set; } = double.NaN;

    public double MaxClimbMs { get; private set; } = double.NaN;

    public double MaxUsableTopM { get; private set; } = double.NaN;

    /// <summary>Reads the figures off a course.</summary>
    /// <remarks>Trigger: the layer first reaches the site's usable depth. First and last usable: the climb that the
    /// site asks for is found up to the height that it asks for. Best window: around the strongest step, climb and usable height at least 80 % of
    /// their greatest. Decline: the first step after it with less than 75 % of the greatest climb, the fall at which the
    /// handbook leaves a thermal [FAA-13A]; both shares are choices.</remarks>
    public static Headline Of(DayTrack track, Site site)
    {
        var steps = track.DepthM.Length;
        var headline = new Headline(steps);
        var (depthWanted, climbWanted) = (site.UsableDepth.Metres, site.UsableClimb.MetresPerSecond);
        for (var i = 0; i < steps; i++)
            headline.Read(track, i, depthWanted, climbWanted);
        if (headline.FirstUsable >= 0)
            headline.FindBest();
        return headline;
    }

    private void Read(DayTrack track, int i, double depthWanted, double climbWanted)
    {
        (ClimbMs[i], CoreMs[i], UsableTopM[i]) = (double.NaN, double.NaN, double.NaN);
        var depth = track.DepthM[i];
        if (double.IsNaN(depth))
            return;
        var cloudy = track.CumulusCover[i] >= FirstCloudShare;
        if (cloudy && FirstCloud < 0)
            (FirstCloud, FirstCloudBaseM) = (i, track.LclM[i]);
        var fed = Math.Clamp((track.CumulusCover[i] - LeastShare) / (FirstCloudShare - LeastShare), 0, 1);
        var climb = Climb.In(depth, track.WStar[i], climbWanted, fed > 0 ? track.LclM[i] : double.PositiveInfinity, fed);
        (ClimbMs[i], CoreMs[i]) = (climb.ClimbMs ?? 0, climb.CoreMs);
        MaxDepthM = double.IsNaN(MaxDepthM) ? depth : Math.Max(MaxDepthM, depth);
        if (Trigger < 0 && depth >= depthWanted)
            (Trigger, TriggerKelvins) = (i, track.ScreenKelvins[i]);
        if (climb.UsableTopM is not { } top)
            return;
        UsableTopM[i] = top;
        if (top < depthWanted)
            return;
        FirstUsable = FirstUsable < 0 ? i : FirstUsable;
        Last = i;
        if (!(ClimbMs[i] <= MaxClimbMs))
            (MaxClimbMs, Strongest) = (ClimbMs[i], i);
        MaxUsableTopM = double.IsNaN(MaxUsableTopM) ? top : Math.Max(MaxUsableTopM, top);
    }

    private void FindBest()
    {
        bool Good(int i) => ClimbMs[i] >= BestShare * MaxClimbMs && UsableTopM[i] >= BestShare * MaxUsableTopM;
        var centre = Strongest;
        while (centre < Last && !Good(centre))
            centre++;
        (BestFrom, BestTo) = (centre, centre);
        while (BestFrom > FirstUsable && Good(BestFrom - 1))
            BestFrom--;
        while (BestTo < Last && Good(BestTo + 1))
            BestTo++;
        for (var i = BestTo; i < ClimbMs.Length && Decline < 0; i++)
        {
            if (!(ClimbMs[i] >= DeclineShare * MaxClimbMs))
                Decline = i;
        }
    }
}
