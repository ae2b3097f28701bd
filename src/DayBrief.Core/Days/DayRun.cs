using DayBrief.BoundaryLayer;
using DayBrief.Thermodynamics;

namespace DayBrief.Days;

/// <summary>Computes one course of the day: sun, ground, layer and cumulus, each acting on the next.</summary>
internal sealed class DayRun
{
    /// <summary>Parts of a 5-minute step for one careful course.</summary>
    public const int FineParts = 6;

    private const double StartM = 10;
    private const double RampM = 500;

    // A cumulus lives some 20 minutes (common practice): a step of five brings this share of the change in shade.
    private const double ShadeShare = 0.22;

    private readonly DayFrame _frame;
    private readonly DayMember _member;
    private readonly GroundSurface _surface;
    private readonly Column _column;
    private readonly int _parts;
    private readonly bool _cumulusShades;
    private double _startM = StartM;

    /// <param name="frame">The day.</param>
    /// <param name="member">How it goes.</param>
    /// <param name="parts">Parts that each 5-minute step is divided in.</param>
    public DayRun(DayFrame frame, DayMember member, int parts)
    {
        (_frame, _member, _parts) = (frame, member, parts);
        // A forecast maximum has the shade of its cumulus in it already.
        _cumulusShades = (frame.Assumptions.MixedTemperature ?? frame.Assumptions.MaxTemperature) is null;
        _surface = frame.Surface with { Moisture = Math.Clamp(frame.Surface.Moisture + member.Moisture, 0.05, 1.3) };
        var aloft = member.AloftK;
        // One kelvin of dew point is 6.5 % of vapour [Bolton1980] near 15 °C.
        _column = frame.Air.Column.With(z => aloft * Math.Min(1, z / RampM), Math.Exp(0.065 * member.DewPointK));
    }

    /// <summary>The course with the heating multiplied by a factor.</summary>
    public DayTrack With(double heatFactor)
    {
        var track = new DayTrack(_frame.Times.Length) { HeatFactor = heatFactor };
        if (_frame.FirstStep >= _frame.Times.Length)
            return track;
        var assumptions = _frame.Assumptions;
        var layer = new MixedLayer(
            _column,
            Math.Clamp(assumptions.EntrainmentRatio * _member.EntrainmentFactor, 0, 1),
            assumptions.Divergence + _member.DivergencePerSecond,
            _startM);
        _startM = layer.DepthM;
        var (screen, cumulus, shade, heated) = (_frame.Air.SurfaceKelvins, default(Cumulus), 0.0, false);
        for (var i = _frame.FirstStep; i < _frame.Times.Length; i++)
        {
            var now = Fluxes(2 * i, screen, shade, heatFactor);
            (screen, heated) = Record(track, i, layer, now, screen, cumulus, heated);
            if (i + 1 >= _frame.Times.Length)
                break;
            cumulus = Step(layer, Fluxes((2 * i) + 1, screen, shade, heatFactor));
            shade += ShadeShare * (Cumulus.Projected(cumulus.Cover) - shade);
        }

        track.TopOfAscentReached = layer.AtTopOfColumn;
        return track;
    }

    private (double Screen, bool Heated) Record(
        DayTrack track, int i, MixedLayer layer, in HeatFlux flux, double screen, in Cumulus cumulus, bool heated)
    {
        (track.SensibleWm2[i], track.LatentWm2[i]) = (flux.SensibleWm2, flux.LatentWm2);
        var state = layer.State;
        var virtualFlux = Buoyancy(flux, state);
        if (virtualFlux <= 0)
        {
            track.ScreenKelvins[i] = heated ? double.NaN : screen;
            track.MaxScreenKelvins = heated ? track.MaxScreenKelvins : screen;
            return (screen, heated);
        }

        var surfaceLayer = SurfaceLayer.Of(
            flux.ThetaFlux, virtualFlux, state.ThetaV, layer.DepthM, _frame.WindMs, _surface.RoughnessM);
        var mixed = state.Theta * _frame.Air.ToSurface;
        screen = mixed + surfaceLayer.ScreenExcessKelvins;
        track.ScreenKelvins[i] = screen;
        (track.DepthM[i], track.Theta[i]) = (layer.DepthM, state.Theta);
        track.WStar[i] = ConvectiveVelocity.Ms(virtualFlux, layer.DepthM, state.ThetaV);
        (track.FrictionMs[i], track.ObukhovM[i]) = (surfaceLayer.FrictionVelocityMs, surfaceLayer.ObukhovLengthM);
        if (_frame.Air.HasMoisture && state.Q > 0)
        {
            track.Q[i] = state.Q;
            track.LclM[i] = CondensationLevel.M(mixed, state.Q, _frame.Air.SurfaceHpa);
            track.CumulusCover[i] = track.LclM[i] <= Cumulus.Reach * layer.DepthM ? cumulus.Cover : 0;
        }

        track.MaxScreenKelvins = Math.Max(screen, heated ? track.MaxScreenKelvins : screen);
        track.MaxMixedKelvins = Math.Max(mixed, heated ? track.MaxMixedKelvins : mixed);
        return (screen, true);
    }

    private Cumulus Step(MixedLayer layer, in HeatFlux flux)
    {
        var seconds = DayFrame.StepSeconds / (double)_parts;
        var assumptions = _frame.Assumptions;
        var before = layer.State;
        var virtualFlux = Buoyancy(flux, before);
        var heats = virtualFlux > 0;
        var cumulus = heats ? CumulusOver(layer, before, virtualFlux) : default;
        var forcing = new LayerForcing(
            heats ? flux.ThetaFlux : 0,
            heats ? flux.QFlux : 0,
            cumulus.MassFluxMs,
            cumulus.ExcessQ,
            assumptions.WarmingKelvinsPerHour / 3600,
            assumptions.MoisteningGkgPerHour / 3.6e6);
        for (var part = 0; part < _parts; part++)
            layer.Advance(seconds, forcing);
        return cumulus;
    }

    private Cumulus CumulusOver(MixedLayer layer, in LayerState state, double virtualFlux)
    {
        if (!_frame.Air.HasMoisture || state.Q <= 0)
            return default;
        var mixed = state.Theta * _frame.Air.ToSurface;
        var lcl = CondensationLevel.M(mixed, state.Q, _frame.Air.SurfaceHpa);
        return lcl > 3 * layer.DepthM
            ? default
            : Cumulus.Over(
                layer.DepthM,
                state,
                ConvectiveVelocity.Ms(virtualFlux, layer.DepthM, state.ThetaV),
                layer.EntrainmentMs,
                mixed,
                _frame.Air.SurfaceHpa,
                lcl);
    }

    private HeatFlux Fluxes(int half, double screen, double shade, double factor)
    {
        if (_frame.Prescribed is { } prescribed)
            return HeatFlux.Of(factor * prescribed[half].SensibleWm2, prescribed[half].LatentWm2, _frame);
        var assumed = Math.Clamp(_frame.Cover[half] + (_member.CloudOktas / 8), 0, 1);
        var cover = 1 - ((1 - assumed) * (1 - (_cumulusShades ? shade : 0)));
        var sunlight = Radiation.ClearSky(_frame.SinElevation[half]) * Radiation.Through(cover);
        var net = Radiation.Net(sunlight, _surface.Albedo, screen, cover);
        var balance = EnergyBalance.Of(net, _surface, Radiation.PsychrometricOverSlope(screen, _frame.Air.SurfaceHpa));
        if (balance.SensibleWm2 <= 0 || factor == 1)
            return HeatFlux.Of(balance.SensibleWm2, balance.LatentWm2, _frame);
        var sensible = factor * balance.SensibleWm2;
        return HeatFlux.Of(sensible, Math.Max(0, balance.SensibleWm2 + balance.LatentWm2 - sensible), _frame);
    }

    private static double Buoyancy(in HeatFlux flux, in LayerState state) =>
        (flux.ThetaFlux * (1 + (Virtual.Factor * state.Q))) + (Virtual.Factor * state.Theta * flux.QFlux);
}

/// <summary>Fluxes at the ground in both measures.</summary>
internal readonly record struct HeatFlux(double SensibleWm2, double LatentWm2, double ThetaFlux, double QFlux)
{
    public static HeatFlux Of(double sensibleWm2, double latentWm2, DayFrame frame) => new(
        sensibleWm2,
        latentWm2,
        sensibleWm2 / (frame.Density * Air.SpecificHeat) / frame.Air.ToSurface,
        latentWm2 / (frame.Density * Air.LatentHeat));
}
