using System.Collections.Immutable;
using DayBrief.BoundaryLayer;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>What the air will do over one site on one day: every five minutes, the headline figures, why, and how sure.</summary>
public sealed record ConvectiveDay
{
    /// <summary>The site.</summary>
    public required Site Site { get; init; }

    /// <summary>The local date.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>What was assumed.</summary>
    public required DayAssumptions Assumptions { get; init; }

    /// <summary>The sun's times.</summary>
    public required SunDay Sun { get; init; }

    /// <summary>The day every 5 minutes of local time, from before sunrise to after sunset.</summary>
    public required ImmutableArray<DayStep> Steps { get; init; }

    /// <summary>When thermals start, are best and end.</summary>
    public required KeyTimes Times { get; init; }

    /// <summary>Greatest depth of the convective layer above ground; null without any.</summary>
    public Height? MaxDepth { get; init; }

    /// <summary>Greatest height above ground at which a climb is worth taking; null without usable thermals.</summary>
    public Height? MaxUsableTop { get; init; }

    /// <summary>Greatest climb; null without usable thermals.</summary>
    public Speed? MaxClimb { get; init; }

    /// <summary>What kind of thermals, and why; says in words when there are none.</summary>
    public required ThermalType ThermalType { get; init; }

    /// <summary>Cumulus and what may come of it.</summary>
    public required CloudOutlook Cloud { get; init; }

    /// <summary>The wind in the layer; null when the ascent has no winds or the day no thermals.</summary>
    public WindInLayer? Wind { get; init; }

    /// <summary>All winds of the ascent over the site; null when it has none.</summary>
    public LayerWind? Winds { get; init; }

    /// <summary>10, 50 and 90 % of the headline figures; null without an ensemble.</summary>
    public DayRanges? Ranges { get; init; }

    /// <summary>10, 50 and 90 % of the usable top at each step, m above ground, 0 where that share has none; empty without
    /// an ensemble.</summary>
    public ImmutableArray<DayRange<double>> UsableTopBand { get; init; } = [];

    /// <summary>The same of the depth of the layer, 0 where that share has none.</summary>
    public ImmutableArray<DayRange<double>> DepthBand { get; init; } = [];

    /// <summary>Share of the ensemble without a usable thermal, 0 to 1; null without an ensemble.</summary>
    public double? NoUsableThermalProbability { get; init; }

    /// <summary>The two inputs that matter most; fewer when nothing else does.</summary>
    public ImmutableArray<WhatMatters> WhatMatters { get; init; } = [];

    /// <summary>A maximum temperature asked for against the energy balance; null when none was asked for.</summary>
    public TemperatureCheck? Temperatures { get; init; }

    /// <summary>What a reader must know before using this.</summary>
    public required ImmutableArray<Caution> Cautions { get; init; }

    /// <summary>Computes a day.</summary>
    /// <remarks>Method and parameters: docs/physics.md. The same input and seed give the same figures.</remarks>
    /// <param name="sounding">The ascent of the morning, or the latest before the day.</param>
    /// <param name="site">The site.</param>
    /// <param name="date">The local date.</param>
    /// <param name="assumptions">What is assumed; null for the defaults.</param>
    /// <param name="stopping">Nobody waits for it any more.</param>
    /// <exception cref="InvalidSoundingException">The site lies above the ascent.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ConvectiveDay Compute(Sounding sounding, Site site, DateOnly date, DayAssumptions? assumptions = null, CancellationToken stopping = default)
    {
        assumptions = (assumptions ?? new()).At(site);
        var cautions = new List<Caution>();
        var profile = Profile.Of(sounding);
        var frame = DayFrame.Of(sounding, profile, site, date, assumptions, cautions) with { Stopping = stopping };
        var free = new DayRun(frame, DayMember.Central, DayRun.FineParts, free: true).With(1);
        var inflow = HeatScale.WholeInflow(frame, free);
        var track = (assumptions.MixedTemperature ?? assumptions.MaxTemperature) is null
            ? free
            : HeatScale.Course(frame, DayMember.Central, DayRun.FineParts, inflowKelvinsPerHour: inflow);
        var headline = Headline.Of(track, site);
        var ensemble = assumptions.EnsembleSize > 0
            ? Ensemble.Of(frame, track.HeatFactor, inflow, new CloudAssessment(frame, track, headline, profile).Assess().DepthM)
            : null;
        if (ensemble is not null)
            (track, headline) = Middle.Of(frame, ensemble, track, headline, inflow);
        var clouds = new CloudAssessment(frame, track, headline, profile);
        var cloud = clouds.Assess();
        var wind = WindOf(frame, track, headline);
        var temperatures = TemperatureCheck.Of(frame, free, track, cautions);
        DayCautions.Add(frame, track, headline, wind, cautions);
        return new()
        {
            Site = site,
            Date = date,
            Assumptions = assumptions,
            Sun = frame.Sun,
            Steps = DaySteps.Of(frame, track, headline, clouds.TopM),
            Times = KeyTimes.Of(headline, frame),
            MaxDepth = double.IsFinite(headline.MaxDepthM) ? Height.FromMetres(headline.MaxDepthM) : null,
            MaxUsableTop = double.IsFinite(headline.MaxUsableTopM) ? Height.FromMetres(headline.MaxUsableTopM) : null,
            MaxClimb = double.IsFinite(headline.MaxClimbMs) ? Speed.FromMetresPerSecond(headline.MaxClimbMs) : null,
            ThermalType = TypeAssessment.Of(frame, track, headline, cloud, wind, ensemble),
            Cloud = cloud,
            Wind = wind,
            Winds = frame.Winds,
            Ranges = ensemble is null ? null : EnsembleRanges.Of(ensemble, frame),
            UsableTopBand = ensemble is null ? [] : [.. StepBand.OfUsableTop(ensemble, frame.Times.Length)],
            DepthBand = ensemble is null ? [] : [.. StepBand.OfDepth(ensemble, frame.Times.Length)],
            NoUsableThermalProbability = ensemble?.NoneUsable,
            WhatMatters = ensemble is null ? [] : Days.WhatMatters.Of(ensemble, frame, track.MaxScreenKelvins - Temperature.ZeroCelsius),
            Temperatures = temperatures,
            Cautions = [.. cautions],
        };
    }

    private static WindInLayer? WindOf(DayFrame frame, DayTrack track, Headline headline)
    {
        var at = headline.Strongest;
        if (at < 0 || frame.Winds is not { } winds)
            return null;
        var wind = WindAssessment.Of(winds, track.DepthM[at], headline.CoreMs[at], track.FrictionMs[at], track.ObukhovM[at]);
        if (wind.LowLevelMaximum is not { } jet || Array.FindIndex(track.DepthM, depth => depth >= jet.Height.Metres) is not (>= 0 and var step))
            return wind;
        return wind with
        {
            LowLevelMaximum = jet with { ReachesGround = frame.Times[step] },
            Reasons = [.. wind.Reasons, Phrase.Of($"The wind of {jet.Speed} at {jet.Height} is mixed down to the field from about {frame.Times[step]:HH:mm}.")],
        };
    }
}
