using DayBrief.Days;
using DayBrief.Flight.Centring;
using DayBrief.Flight.Gliders;
using DayBrief.Service.Charts;
using DayBrief.Service.Infrastructure;
using DayBrief.Units;
using Hangfire;

namespace DayBrief.Service.Features.Technique;

/// <summary>What page and PDF say of how to fly the day, for each group and class with the usual variometer, and the figures behind it.</summary>
/// <param name="Ready">Whether all of it is computed; else what is not yet has its limits and rules alone.</param>
/// <param name="VariometerLagS">Lag of the usual variometer.</param>
/// <param name="Groups">Each group with each class.</param>
internal sealed record TechniqueJson(bool Ready, double VariometerLagS, IReadOnlyList<TechniqueOfJson> Groups)
{
    /// <summary>All of it, computed now where it is not there yet. Null on a day without usable thermals.</summary>
    public static TechniqueJson? Now(Brief brief, Figures figures, TechniqueDesk desk, CancellationToken stopping = default) =>
        Of(pilot => TechniqueView.Now(brief, pilot, figures, desk, stopping));

    /// <summary>What is there; the rest is asked for, so that it is there the next time.</summary>
    public static TechniqueJson? SoFar(Brief brief, Figures figures, TechniqueDesk desk, IBackgroundJobClient jobs) =>
        Of(pilot => TechniqueView.For(brief, pilot, figures, desk, jobs));

    private static TechniqueJson? Of(Func<Pilot, TechniqueView?> view)
    {
        var pilots = from experience in Enum.GetValues<Experience>()
                     from glider in Enum.GetValues<GliderClass>()
                     select new Pilot { Experience = experience, Glider = glider };
        var views = pilots.Select(view).OfType<TechniqueView>().ToArray();
        return views.Length == 0
            ? null
            : new(views.All(each => each.Facts is not null || each.TooLow), new Pilot().Variometer.LagS, [.. views.Select(TechniqueOfJson.Of)]);
    }
}

/// <summary>The technique of one group and class. Heights are above the field.</summary>
internal sealed record TechniqueOfJson
{
    public required string Experience { get; init; }

    public required string Glider { get; init; }

    public required double? LeastCirclingHeightM { get; init; }

    public required double? SteepestBankDeg { get; init; }

    public required double? LowBelowM { get; init; }

    public required double? LowStallMarginPct { get; init; }

    /// <summary>Whether the site set the height and the bank; else they are common practice.</summary>
    public required LimitsSetJson SetBySite { get; init; }

    /// <summary>The thermal that is circled in; null where the group may not circle at all.</summary>
    public required CircledThermalJson? Thermal { get; init; }

    public required AdvisedCircleJson? Circle { get; init; }

    public required IReadOnlyList<AdvisedCircleJson> ByHeight { get; init; }

    public required string? Way { get; init; }

    /// <summary>The day in one line to be carried into the air.</summary>
    public required string? Line { get; init; }

    public required double? TurnS { get; init; }

    /// <summary>Seconds from the weakest reading to the roll-out, and level after it.</summary>
    public required double? RollOutAfterWeakestS { get; init; }

    public required double? LevelS { get; init; }

    /// <summary>Climb lost in the centred circle at the same bank.</summary>
    public required double? FiveKtTooFastMs { get; init; }

    /// <summary>The circles to which the swing table tightens, smallest swing first.</summary>
    public required IReadOnlyList<AdvisedCircleJson> TightenTo { get; init; }

    /// <summary>The words of page and PDF.</summary>
    public required IReadOnlyList<TechniquePartJson> Parts { get; init; }

    public static TechniqueOfJson Of(TechniqueView view)
    {
        var (rule, facts) = (view.Group.Rule, view.None is null ? view.Facts : null);
        return new()
        {
            Experience = Choice.NameOf(view.Pilot.Experience),
            Glider = GenericGlider.NameOf(view.Pilot.Glider),
            LeastCirclingHeightM = Json.Rounded(rule.LeastHeight.Metres, 1),
            SteepestBankDeg = Json.Rounded(rule.SteepestBankDegrees, 1),
            LowBelowM = Json.Rounded(rule.LowBelow.Metres, 1),
            LowStallMarginPct = Json.Rounded(rule.LowMarginPct, 1),
            SetBySite = new(rule.LeastHeightSet, rule.SteepestBankSet),
            Thermal = facts is null ? null : CircledThermalJson.Of(facts),
            Circle = facts is null ? null : AdvisedCircleJson.Of(facts.Study.Circle, facts.Thermal.Height),
            ByHeight = facts is null ? [] : [.. TechniqueText.Heights(facts).Where(best => best.Optimum is not null).Select(best => AdvisedCircleJson.Of(best.Optimum!.Circle, best.Height))],
            Way = facts is null ? null : CentringWays.NameOf(facts.Study.Recommended),
            Line = facts is null ? null : CarryText.Of(facts),
            TurnS = facts is null ? null : Json.Rounded(facts.Study.Circle.PeriodS, 1),
            RollOutAfterWeakestS = facts is null ? null : Json.Rounded(ClassTable.RollOutS(facts.Study), 1),
            LevelS = facts is null ? null : Json.Rounded(facts.Study.SimulatedRollOut.LevelS, 1),
            FiveKtTooFastMs = facts is null ? null : Json.Rounded(ClassTable.TooFastMs(facts.Study), 2),
            TightenTo = facts is null ? [] : [.. Tightened(facts)],
            Parts = [.. TechniqueParts.Of(view).Select(part => new TechniquePartJson(part.Title, part.Lines))],
        };
    }

    private static IEnumerable<AdvisedCircleJson> Tightened(TechniqueFacts facts) =>
        facts.Study.Swing.Rows.Select(row => row.TightenDeg).OfType<double>().Where(degrees => degrees > 0)
            .Select(degrees => facts.Study.Circle.BankDeg + Math.Ceiling(degrees)).Distinct()
            .Select(bank => AdvisedCircleJson.Of(Flight.Gliders.Circle.At(facts.Glider, bank, Speed.FromMetresPerSecond(facts.Study.Circle.SpeedMsAt(bank))), facts.Thermal.Height));
}

internal sealed record LimitsSetJson(bool LeastCirclingHeight, bool SteepestBank);

internal sealed record CircledThermalJson(double? HeightM, double? RadiusM, double? CoreUpdraftMs, DateTimeOffset At)
{
    public static CircledThermalJson Of(TechniqueFacts facts) => new(
        Json.Rounded(facts.Thermal.Height.Metres, 1),
        Json.Rounded(facts.Thermal.RadiusM, 1),
        Json.Rounded(facts.Thermal.CoreUpdraft.MetresPerSecond, 3),
        facts.At.Time);
}

/// <summary>A bank with the speed that keeps its margin, at a height.</summary>
internal sealed record AdvisedCircleJson(double? HeightM, double? BankDeg, double? SpeedKt, double? StallMarginPct)
{
    public static AdvisedCircleJson Of(Circle circle, Height height) => new(
        Json.Rounded(height.Metres, 1),
        Json.Rounded(circle.BankDeg, 1),
        Math.Ceiling((circle.Speed.Knots - 1e-6) * 10) / 10,
        Json.Rounded(circle.StallMarginPct, 1));
}

internal sealed record TechniquePartJson(string Title, IReadOnlyList<string> Lines);
