using System.Diagnostics;

namespace DayBrief.BoundaryLayer;

/// <summary>The stirred layer over heated ground: it warms, moistens and eats its way into the air above.</summary>
/// <remarks>Zero-order jump model [Tennekes1973], [Vila2015] with the entrainment flux −A (w′θ_v′)_s, over the actual
/// column. The state is the heat and water that the layer has gained, so both are conserved exactly whatever the step:
/// θ = (Q + ∫θ₀ dz)/h. Subsidence −D z squeezes the column; heights are kept as H = h e^{Dt}, which makes that exact as
/// well. The top rises at A (w′θ_v′)_s/Δθ_v, not faster than the updrafts themselves (0.46 w*, the greatest mean updraft
/// of [Allen2006] eq. 11); air that is no warmer than the layer is taken in at that limit (encroachment, A = 0). A cumulus mass flux takes air out
/// at the top [Neggers2006], at most as much as is taken in; its water stays in the cloud layer above and is
/// sent back when that layer is full. Air above the layer may cool by itself. Midpoint rule in time.</remarks>
internal sealed class MixedLayer
{
    private const double FastestRise = 0.46;

    // Air this little warmer than the ground layer counts as stirred with it from the start.
    private const double StirredKelvins = 0.01;

    private Column _column;
    private readonly double _entrainment;
    private readonly double _divergence;
    private readonly double _held;
    private double _stretched;
    private double _stretch = 1;
    private (double Seconds, double Half, double Whole) _squeeze = (0, 1, 1);
    private double _heat;
    private double _water;
    private double _advectedTheta;
    private double _advectedQ;
    private double _freeTheta;

    /// <param name="column">The air at the start.</param>
    /// <param name="entrainment">Entrainment ratio A, 0 to 1.</param>
    /// <param name="divergence">D: the air sinks at D z and warms by it, s⁻¹.</param>
    /// <param name="startM">Depth at the start; deeper where the column is already stirred.</param>
    /// <param name="heldDivergence">The same of air that is cooled as fast as it warms: the column stays as it is.</param>
    public MixedLayer(Column column, double entrainment, double divergence, double startM, double heldDivergence = 0)
    {
        (_column, _entrainment, _divergence, _held) = (column, entrainment, divergence, heldDivergence);
        _stretched = startM;
        State = StateAt(_stretched, _heat, _water);
        Encroach(column.TopM, StirredKelvins);
    }

    /// <summary>Depth, m.</summary>
    public double DepthM => _stretched / _stretch;

    /// <summary>The top has reached the end of what is known.</summary>
    public bool AtTopOfColumn => _stretched >= _column.TopM;

    /// <summary>Entrainment velocity of the last step, m/s.</summary>
    public double EntrainmentMs { get; private set; }

    /// <summary>Water that cumulus has carried out of the layer, m kg/kg: it lies in the cloud layer.</summary>
    public double CloudWater { get; private set; }

    /// <summary>State of the layer and of the air just above it.</summary>
    public LayerState State { get; private set; }

    /// <summary>Other air has come above the layer; the layer itself stays as it is.</summary>
    public void Replace(Column column)
    {
        var (before, after) = (_column.At(_stretched), column.At(Math.Min(_stretched, column.TopM)));
        (_heat, _water) = (_heat + before.ThetaSum - after.ThetaSum, _water + before.QSum - after.QSum);
        _column = column;
        State = StateAt(_stretched, _heat, _water);
    }

    /// <summary>Advances the layer.</summary>
    public void Advance(double seconds, in LayerForcing forcing)
    {
        // The exponentials of a step are the same in every step of the same length.
        if (_squeeze.Seconds != seconds)
            _squeeze = (seconds, Math.Exp(_divergence * seconds / 2), Math.Exp(_divergence * seconds));
        var start = _stretch;
        var half = SlopeOf(State, _stretched, forcing);
        var middle = start * _squeeze.Half;
        var slope = SlopeAt(
            _stretched + (start * half.Rise * seconds / 2),
            _heat + (start * half.Heat * seconds / 2),
            _water + (start * half.Water * seconds / 2),
            forcing);
        EntrainmentMs = half.Entrainment;
        _stretched = Math.Min(_column.TopM, Math.Max(1, _stretched + (middle * slope.Rise * seconds)));
        _heat += middle * slope.Heat * seconds;
        _water += middle * slope.Water * seconds;
        CloudWater += slope.Cloud * seconds;
        _stretch = start * _squeeze.Whole;
        _freeTheta -= forcing.FreeCooling * seconds;
        _advectedTheta += forcing.ThetaAdvection * seconds;
        _advectedQ += forcing.QAdvection * seconds;
        State = StateAt(_stretched, _heat, _water);
        if (slope.WStarCubed > 0 && State.Jump < 0)
            Encroach(Math.Max(0, Limit(slope.WStarCubed) - slope.Entrainment) * seconds * middle);
        Debug.Assert(double.IsFinite(_stretched) && double.IsFinite(_heat) && double.IsFinite(_water));
    }

    private LayerSlope SlopeAt(double stretched, double heat, double water, in LayerForcing forcing) =>
        forcing.IsNone ? default : SlopeOf(StateAt(stretched, heat, water), stretched, forcing);

    private LayerSlope SlopeOf(in LayerState state, double stretched, in LayerForcing forcing)
    {
        if (forcing.IsNone)
            return default;
        var flux = forcing.ThetaFlux * (1 + (Virtual.Factor * state.Q))
            + (Virtual.Factor * state.Theta * forcing.QFlux);
        var wStarCubed = ConvectiveVelocity.Cubed(flux, stretched / _stretch, state.ThetaV);
        var jump = state.Jump;
        var entrainment = flux > 0 && jump > 0 && stretched < _column.TopM
            ? Limited(_entrainment * flux / jump, wStarCubed)
            : 0;
        var mass = Math.Min(forcing.MassFlux, forcing.MostOfEntrained * entrainment);
        // Air that sinks without warming pushes the layer out sideways; what it pushes out is the layer's own.
        var pushed = mass + (_held * stretched / _stretch);
        // A full cloud layer sends back what it is brought.
        var carried = mass * (state.Q + forcing.MassExcessQ - state.QAbove) * Math.Clamp(5 * (1 - (CloudWater / forcing.CloudRoomQ)), 0, 1);
        return new(
            entrainment - pushed,
            forcing.ThetaFlux + (entrainment * _freeTheta) + (pushed * (state.ThetaAbove - _freeTheta - state.Theta)),
            forcing.QFlux - carried + ((pushed - mass) * (state.QAbove - state.Q)),
            carried,
            entrainment,
            wStarCubed);
    }

    /// <summary>Not faster than the updrafts. Their cube root costs as much as the rest of a step and is seldom needed:
    /// 0.09 is less than 0.46³.</summary>
    private static double Limited(double rise, double wStarCubed) =>
        rise * rise * rise < 0.09 * wStarCubed ? rise : Math.Min(Limit(wStarCubed), rise);

    private static double Limit(double wStarCubed) => FastestRise * Math.Cbrt(wStarCubed);

    private LayerState StateAt(double stretched, double heat, double water)
    {
        var above = _column.At(stretched);
        return new(
            ((heat + above.ThetaSum) / stretched) + _advectedTheta,
            Math.Max(0, ((water + above.QSum) / stretched) + _advectedQ),
            above.Theta + _advectedTheta + _freeTheta,
            Math.Max(0, above.Q + _advectedQ));
    }

    /// <summary>Takes in air that is no warmer than the layer, over at most the given distance.</summary>
    private void Encroach(double room, double slack = 0)
    {
        var furthest = Math.Min(_column.TopM, _stretched + room);
        if (State.Jump >= slack || room <= 0)
            return;
        if (room >= 100 || Jump(furthest) >= slack)
            furthest = Stable(furthest, slack);
        var taken = furthest - _stretched;
        _heat += taken * _freeTheta;
        _stretched = furthest;
        State = StateAt(_stretched, _heat, _water);
    }

    /// <summary>The first height up to the furthest at which the air is no longer colder than the layer.</summary>
    private double Stable(double furthest, double slack)
    {
        var (low, high) = (_stretched, _stretched);
        while (high < furthest && Jump(high) < slack)
            (low, high) = (high, Math.Min(furthest, high + 10));
        for (var i = 0; i < 20 && Jump(high) >= slack; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Jump(middle) < slack ? (middle, high) : (low, middle);
        }

        return high;
    }

    private double Jump(double stretched) => StateAt(stretched, _heat, _water).Jump;

    private readonly record struct LayerSlope(double Rise, double Heat, double Water, double Cloud, double Entrainment, double WStarCubed);
}

/// <summary>The factor of the virtual potential temperature θ (1 + 0.61 q).</summary>
internal static class Virtual
{
    /// <summary>(1 − ε)/ε rounded as [Stull1988] does.</summary>
    public const double Factor = 0.61;
}

/// <summary>A mixed layer and the air just above it.</summary>
internal readonly record struct LayerState(double Theta, double Q, double ThetaAbove, double QAbove)
{
    public double ThetaV => Theta * (1 + (Virtual.Factor * Q));

    public double ThetaVAbove => ThetaAbove * (1 + (Virtual.Factor * QAbove));

    /// <summary>How much warmer the air above is, for buoyancy.</summary>
    public double Jump => ThetaVAbove - ThetaV;
}

/// <summary>What drives a mixed layer during a step.</summary>
/// <param name="ThetaFlux">w′θ′ at the surface, K m/s.</param>
/// <param name="QFlux">w′q′ at the surface, m/s kg/kg.</param>
/// <param name="MassFlux">Cumulus mass flux through the top, m/s; limited to the entrainment.</param>
/// <param name="MassExcessQ">How much moister that air is than the layer, kg/kg.</param>
/// <param name="ThetaAdvection">Warming of the whole column by advection, K/s.</param>
/// <param name="QAdvection">Moistening of the whole column by advection, s⁻¹.</param>
/// <param name="FreeCooling">Cooling of the air above the layer by its own radiation, K/s.</param>
/// <param name="CloudRoomQ">What the cloud layer takes until it is saturated, m kg/kg; cumulus carries less the fuller it is.</param>
/// <param name="MostOfEntrained">Share of what comes in at the top that cumulus takes at most.</param>
internal readonly record struct LayerForcing(
    double ThetaFlux,
    double QFlux,
    double MassFlux = 0,
    double MassExcessQ = 0,
    double ThetaAdvection = 0,
    double QAdvection = 0,
    double FreeCooling = 0,
    double CloudRoomQ = double.PositiveInfinity,
    double MostOfEntrained = 1)
{
    /// <summary>The ground gives nothing: the layer only rests or moves with the air around it.</summary>
    public bool IsNone => ThetaFlux == 0 && QFlux == 0;
}
