using DayBrief.Flight.Centring.Kernel;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Flight.Thermals;

namespace DayBrief.Flight.Centring;

/// <summary>Turns a way and its numbers into what the kernel flies, for one thermal, circle and instrument.</summary>
internal sealed class Briefing(Thermal thermal, Circle circle, Variometer instrument, SwingTable swing, PilotSkill? skill = null, double steepestBankDeg = 65)
{
    private readonly PilotSkill _skill = skill ?? PilotSkill.Practised;

    private const double KnotsMs = 1852.0 / 3600;

    /// <summary>Lift that a pilot feels as a surge: a quarter of the core, above the gusts.</summary>
    internal const double SurgeShare = 0.25;

    /// <summary>Least swing that is acted upon, over the core: the gusts' own.</summary>
    private const double LeastSwingShare = 0.15;

    public Thermal Thermal => thermal;

    /// <summary>Whole seconds from the surge to the turn that geometry asks for.</summary>
    public double TurnInS => TurnIn.AfterSurgeS(thermal, circle, instrument.DisplayDelayS + _skill.ExtraDelayS);

    public Circle Circle => circle;

    public SwingTable Swing => swing;

    /// <summary>By how much the circle may be tightened: in steps of 5°, 10° at most, 0 where that leads beyond the steepest bank.</summary>
    public IReadOnlyList<double> Tightenings { get; } =
        circle.BankDeg + 10 <= steepestBankDeg ? [10, 5] : circle.BankDeg + 5 <= steepestBankDeg ? [5] : [0];

    /// <summary>The way flown with an error or none.</summary>
    public Flying Fly(CentringWay way, WayParameters numbers, PilotError error = PilotError.None)
    {
        var late = instrument.DisplayDelayS + _skill.ExtraDelayS + (error == PilotError.Late ? 1.6 : 0);
        var flying = Flown(circle) with
        {
            EntryDelay = (float)((numbers.AfterSurgeS ?? 0) + late),
            TurnOnSurge = numbers.AfterSurgeS is not null,
        };
        return Blunder(Correct(flying, way, numbers, late * circle.RateDegS), error);
    }

    /// <summary>The circle's own: the same glider at another speed, bank or rate of roll flies the same way.</summary>
    public Flying Flown(Circle own)
    {
        var polar = own.Glider.Polar;
        return new()
        {
            PolarA = (float)polar.A,
            PolarB = (float)polar.B,
            PolarC = (float)polar.C,
            Bank = Radians(own.BankDeg),
            Speed = (float)own.SpeedMs,
            RollRate = Radians(own.Glider.RollRateDegS),
            Lag = (float)instrument.LagS,
            Uncompensated = (float)(1 - instrument.Compensation),
            SurgeMs = (float)(SurgeShare * thermal.CoreUpdraft.MetresPerSecond),
            CoreMs = (float)thermal.CoreUpdraft.MetresPerSecond,
            CentredShare = (float)(CentredM() / thermal.RadiusM),
            Observe = Radians(_skill.ObserveDeg),
            BankWander = Radians(_skill.BankWanderDeg),
            BankScatter = Radians(_skill.BankScatterDeg),
            SpeedScatter = (float)_skill.SpeedScatterMs,
            PlaceScatter = Radians(_skill.PlacedWithinDeg(instrument, own.PeriodS)),
        };
    }

    /// <summary>Centred: so near the core that the circle's mean climb is within a tenth, or 0.1 m/s, of the best; nowhere
    /// (0) if even the centred circle does not climb.</summary>
    public double CentredM()
    {
        var best = swing.Rows[0].MeanClimbMs;
        if (best <= 0)
            return 0;

        var enough = best - Math.Max(0.1, 0.1 * best);
        var updraft = thermal.At(thermal.Height);
        var (inner, outer) = (0.0, 2 * thermal.RadiusM);
        for (var halving = 0; halving < 20; halving++)
        {
            var middle = 0.5 * (inner + outer);
            (inner, outer) = SwingTable.MeanClimbMs(updraft, circle, middle) >= enough ? (middle, outer) : (inner, middle);
        }

        return inner;
    }

    private Flying Correct(Flying flying, CentringWay way, WayParameters n, double lateDeg) => way switch
    {
        CentringWay.LevelAfter270 => flying with
        {
            FirstTurn = FirstTurn.LevelledAfter270,
            JudgeAt = Radians(270 - (0.5 * circle.RateDegS * circle.RollS) + lateDeg),
            LevelS = (float)n.LevelS,
        },
        CentringWay.Reverse => flying with { FirstTurn = FirstTurn.Reversed, JudgeAt = Radians(n.JudgeDeg + lateDeg) },
        CentringWay.StraightenAndShift => flying with
        {
            AfterWorst = Radians(n.AfterWorstDeg + lateDeg),
            LevelS = (float)n.LevelS,
            ShiftFrom = Threshold(0.5 * CentreShift.StraightenClosedForm(circle, n.LevelS)),
        },
        CentringWay.TightenAndEase => Tighten(flying, n, lateDeg),
        CentringWay.BySwing => Tighten(flying, n, lateDeg) with
        {
            AfterWorst = Radians(n.AfterWorstDeg + lateDeg),
            LevelS = -(float)circle.RollS,
            LevelBySwing = Hinges(n.Share),
            ShiftFrom = Threshold(n.LargeFrom * thermal.RadiusM),
        },
        _ => flying,
    };

    private Flying Tighten(Flying flying, WayParameters n, double lateDeg) => n.TightenDeg <= 0 ? flying : flying with
    {
        AfterBest = Radians(n.AfterBestDeg + lateDeg),
        Tighten = Radians(n.TightenDeg),
        HoldTight = Radians(n.HoldDeg),
        TightenFrom = Threshold(0.5 * CentreShift.TightenClosedForm(circle, n.TightenDeg, n.HoldDeg)),
    };

    private static Flying Blunder(Flying flying, PilotError error) => error switch
    {
        PilotError.FastEntry => flying with { EntryExcess = (float)(7.5 * KnotsMs), SpeedMemory = 12 },
        PilotError.ChasingTheNeedle => flying with
        {
            Observe = Radians(120),
            ShiftFrom = flying.ShiftFrom < Flying.NoSwing ? (flying.TightenFrom < Flying.NoSwing ? flying.ShiftFrom : 0) : Flying.NoSwing,
            TightenFrom = flying.TightenFrom < Flying.NoSwing ? 0 : Flying.NoSwing,
        },
        PilotError.SloppyRoll => flying with
        {
            RollRate = 0.5f * flying.RollRate,
            BankWander = flying.BankWander + Radians(3),
        },
        _ => flying,
    };

    /// <summary>The swing that tells of such a distance, but never so little that gusts alone make it.</summary>
    private float Threshold(double offsetM) =>
        (float)Math.Max(swing.SwingMs(Math.Min(offsetM, swing.Rows[^1].OffsetM * 0.95)), LeastSwingShare * thermal.CoreUpdraft.MetresPerSecond);

    /// <summary>The table's distance over swing as seconds of straight flight, one hinge a row.</summary>
    private Flying.Hinge[] Hinges(double share)
    {
        var hinges = new List<Flying.Hinge>();
        var before = 0.0;
        for (var row = 1; row < swing.Rows.Count; row++)
        {
            var (below, above) = (swing.Rows[row - 1], swing.Rows[row]);
            var slope = share / circle.SpeedMs * (above.OffsetM - below.OffsetM) / (above.SwingMs - below.SwingMs);
            hinges.Add(new((float)below.SwingMs, (float)(slope - before)));
            before = slope;
        }

        hinges.Add(new((float)swing.Rows[^1].SwingMs, (float)-before));
        return [.. hinges];
    }

    private static float Radians(double degrees) => (float)(degrees * Math.PI / 180);
}
