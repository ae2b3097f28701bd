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

    /// <summary>Share of cloudy updrafts at which cumulus is fed in full: about one okta of projected cover. Below, in
    /// proportion (a choice), so that a trace of cloud lifts the usable top by a trace.</summary>
    private const double FullShare = 0.03;

    // Cloud that stands for less is chance, not the first cumulus: 15 min (a choice).
    private const int LastingSteps = 3;

    // Thermals take up a new cloud base, or a deeper layer, over the life of one or two of them (a choice), and not faster than
    // they rise: 200 m in five minutes.
    private const double TakenUp = 0.3;
    private const double MostRiseM = 200;

    private double _fed;
    private double _topBefore = double.NaN;
    private int _cloudFor;

    private Headline(int steps) => (ClimbMs, CoreMs, UsableTopM, Usable) = (new double[steps], new double[steps], new double[steps], new bool[steps]);

    public double[] ClimbMs { get; }

    public double[] CoreMs { get; }

    public double[] UsableTopM { get; }

    /// <summary>Steps at which the site's climb is found up to its height.</summary>
    public bool[] Usable { get; }

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
    /// <remarks>Trigger and first usable are one event: the climb that the site asks for is first found up to the height that it asks
    /// for. A layer that is already so deep in the morning, or stirred without strength, is none. Best window: around the strongest step, climb and usable height at least 80 % of
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
        _cloudFor = track.CumulusCover[i] >= FirstCloudShare ? _cloudFor + 1 : 0;
        if (_cloudFor == LastingSteps && FirstCloud < 0)
            (FirstCloud, FirstCloudBaseM) = (i + 1 - LastingSteps, track.LclM[i + 1 - LastingSteps]);
        var share = double.IsFinite(track.CumulusCover[i]) ? track.CumulusCover[i] : 0;
        _fed += TakenUp * (Math.Clamp(share / FullShare, 0, 1) - _fed);
        var climb = Climb.In(depth, track.WStar[i], climbWanted, _fed > 0.001 ? track.LclM[i] : double.PositiveInfinity, _fed > 0.99 ? 1 : _fed);
        (ClimbMs[i], CoreMs[i]) = (climb.ClimbMs ?? 0, climb.CoreMs);
        MaxDepthM = double.IsNaN(MaxDepthM) ? depth : Math.Max(MaxDepthM, depth);
        var before = _topBefore;
        _topBefore = climb.UsableTopM ?? double.NaN;
        if (climb.UsableTopM is not { } found)
            return;
        var top = double.IsNaN(before) ? found : Math.Clamp(found, before - MostRiseM, before + MostRiseM);
        UsableTopM[i] = _topBefore = top;
        if (top < depthWanted)
            return;
        if (FirstUsable < 0)
            (FirstUsable, Trigger, TriggerKelvins) = (i, i, track.ScreenKelvins[i]);
        Usable[i] = true;
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
