using DayBrief.BoundaryLayer;
using DayBrief.Thermodynamics;
using DayBrief.Updrafts;

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

    // What the ascent's lowest reading has over the stirred air is halved in half an hour (a choice).
    private const double LeftoverShare = 0.89;

    // α of the driest and of the wettest ground of the table of covers.
    private const double DriestMoisture = 0.1;
    private const double WettestMoisture = 1.2;

    private const double CloudWorthFollowing = 0.001;
    private const int CloudEverySteps = 6;

    // Cloud that rises this far above the layer's top is free of its lid (a choice).
    private const double FreeRiseM = 300;

    private readonly DayFrame _frame;
    private readonly DayMember _member;
    private readonly GroundSurface _surface;
    private readonly Column _column;
    private readonly Column _morning;
    private readonly GroundSurface _driest;
    private readonly int _parts;
    private readonly bool _cumulusShades;
    private readonly int _heated;
    private readonly double _surfaceQ;
    private readonly double[] _chillKelvins;
    private readonly double _aloft;
    private readonly Column?[] _later;
    private double _lost;
    private double _startM = StartM;
    private double _leftover;
    private int _cloudStep;
    private double _cloudRoomQ;
    private double _cloudTopM;

    /// <param name="frame">The day.</param>
    /// <param name="member">How it goes.</param>
    /// <param name="free">Not held to a temperature, whatever is asked for.</param>
    /// <param name="parts">Parts that each 5-minute step is divided in.</param>
    public DayRun(DayFrame frame, DayMember member, int parts, bool free = false)
    {
        frame.Stopping.ThrowIfCancellationRequested();
        (_frame, _member, _parts) = (frame, member, parts);
        _later = new Column?[frame.Hourly is null ? 0 : frame.Times.Length];
        // A forecast maximum has the shade of its cumulus in it already.
        _cumulusShades = !frame.Assumptions.WithoutCumulus
            && (free || (frame.Assumptions.MixedTemperature ?? frame.Assumptions.MaxTemperature) is null);
        _surface = frame.Surface with { Moisture = Math.Clamp(frame.Surface.Moisture + member.Moisture, 0.05, 1.3) };
        _aloft = member.AloftK * (frame.Hourly is null ? 1 : AirByHour.SpreadLeft);
        _column = Perturbed(frame.Air.Column);
        _driest = _surface with { Moisture = Math.Min(_surface.Moisture, DriestMoisture) };
        _surfaceQ = _column.At(0).Q;
        (_heated, _chillKelvins, _morning) = Morning();
    }

    /// <summary>The step of the first heating, what the air at the ground has lost until each step, and the air then.</summary>
    private (int Heated, double[] ChillKelvins, Column Morning) Morning()
    {
        var (lost, chill, i) = (_frame.NightChill, new double[_frame.Times.Length], _frame.FirstStep);
        for (; i < _frame.Times.Length; i++)
        {
            chill[i] = lost / NightChill.ScaleM * _frame.Air.ToSurface;
            var flux = Fluxes(2 * i, _frame.Air.SurfaceKelvins - chill[i], shade: 0, factor: 1);
            if (flux.ThetaFlux + (Virtual.Factor * _frame.Air.SurfaceKelvins * flux.QFlux) > 0)
                break;
            lost -= Math.Clamp(flux.ThetaFlux, _frame.Prescribed is null ? -NightChill.MostWm2 / 1200 : -1, 0) * DayFrame.StepSeconds;
        }

        _lost = lost;
        return (i, chill, Chilled(_column));
    }

    // One kelvin of dew point is 6.5 % of vapour [Bolton1980] near 15 °C.
    private Column Perturbed(Column column) =>
        column.With(z => _aloft * Math.Min(1, z / RampM), Math.Exp(0.065 * _member.DewPointK));

    private Column Chilled(Column column) => _lost > 0.1 ? column.Chilled(_lost, NightChill.ScaleM) : column;

    /// <summary>The air of the hour, every half-hour; computed once for all courses of this run.</summary>
    private Column LaterAt(int i) => _later[i] ??= Chilled(Perturbed(
        _frame.Hourly!.At(_frame.Air.Column, _frame.Times[_frame.FirstStep], _frame.Times[i])));

    /// <summary>The course with the heating multiplied by a factor, and air of another temperature flowing in at all heights.</summary>
    public DayTrack With(double heatFactor, double inflowKelvinsPerHour = 0, bool beyondSun = false)
    {
        var track = new DayTrack(_frame.Times.Length)
        {
            HeatFactor = heatFactor,
            InflowKelvinsPerHour = inflowKelvinsPerHour,
            BeyondSun = beyondSun,
        };
        for (var i = _frame.FirstStep; i < Math.Min(_heated, _frame.Times.Length); i++)
            RecordStill(track, i);
        if (_heated >= _frame.Times.Length)
            return track;
        var assumptions = _frame.Assumptions;
        var layer = new MixedLayer(
            _morning,
            Math.Clamp((assumptions.EntrainmentRatio ?? DayAssumptions.UsualEntrainmentRatio) * _member.EntrainmentFactor, 0, 1),
            assumptions.Divergence + _member.DivergencePerSecond,
            _startM,
            assumptions.HeldDivergence);
        _startM = layer.DepthM;
        var (screen, cumulus, shade) = (_frame.Air.SurfaceKelvins - _chillKelvins[_heated], default(Cumulus), 0.0);
        (_leftover, _cloudStep, _cloudRoomQ, _cloudTopM) = (screen, -CloudEverySteps, double.PositiveInfinity, double.PositiveInfinity);
        for (var i = _heated; i < _frame.Times.Length; i++)
        {
            _frame.Stopping.ThrowIfCancellationRequested();
            if (_frame.Hourly is not null && i % CloudEverySteps == 0)
                layer.Replace(LaterAt(i));
            var now = Fluxes(2 * i, screen, shade, heatFactor);
            screen = Record(track, i, layer, now, screen, cumulus);
            if (i + 1 >= _frame.Times.Length)
                break;
            cumulus = Step(layer, i, Fluxes((2 * i) + 1, screen, shade, heatFactor), inflowKelvinsPerHour);
            shade += ShadeShare * ((track.LowCloud[i] ? LowCloud.Shade : Cumulus.Projected(cumulus.Cover)) - shade);
        }

        track.TopOfAscentReached = layer.AtTopOfColumn;
        return track;
    }

    /// <summary>Before the ground heats the air: it rests, and cools at the ground.</summary>
    private void RecordStill(DayTrack track, int i)
    {
        var screen = _frame.Air.SurfaceKelvins - _chillKelvins[i];
        var flux = Fluxes(2 * i, screen, shade: 0, factor: 1);
        (track.SensibleWm2[i], track.LatentWm2[i], track.ScreenKelvins[i]) = (flux.SensibleWm2, flux.LatentWm2, screen);
        track.MaxScreenKelvins = double.IsNaN(track.MaxScreenKelvins) ? screen : Math.Max(track.MaxScreenKelvins, screen);
        track.LowCloud[i] = _frame.Air.HasMoisture && LowCloud.IsFog(CondensationLevel.M(screen, _surfaceQ, _frame.Air.SurfaceHpa));
    }

    private double Record(DayTrack track, int i, MixedLayer layer, in HeatFlux flux, double screen, in Cumulus cumulus)
    {
        (track.SensibleWm2[i], track.LatentWm2[i]) = (flux.SensibleWm2, flux.LatentWm2);
        var state = layer.State;
        var virtualFlux = Buoyancy(flux, state);
        if (virtualFlux <= 0)
            return screen;
        var surfaceLayer = SurfaceLayer.Of(
            flux.ThetaFlux, virtualFlux, state.ThetaV, layer.DepthM, _frame.WindMs, _surface.RoughnessM);
        var mixed = state.Theta * _frame.Air.ToSurface;
        screen = mixed + surfaceLayer.ScreenExcessKelvins;
        // What the ascent's lowest reading has over the stirred air is stirred away, not gone at once.
        _leftover = i == _heated ? _leftover - screen : _leftover * LeftoverShare;
        screen += _leftover;
        track.ScreenKelvins[i] = screen;
        (track.DepthM[i], track.Theta[i]) = (layer.DepthM, state.Theta);
        track.WStar[i] = ConvectiveVelocity.Ms(virtualFlux, layer.DepthM, state.ThetaV);
        (track.FrictionMs[i], track.ObukhovM[i]) = (surfaceLayer.FrictionVelocityMs, surfaceLayer.ObukhovLengthM);
        if (_frame.Air.HasMoisture && state.Q > 0)
        {
            track.Q[i] = state.Q;
            track.LclM[i] = CondensationLevel.M(mixed, state.Q, _frame.Air.SurfaceHpa);
            var low = LowCloud.Is(track.LclM[i], layer.DepthM);
            (track.LowCloud[i], track.CumulusCover[i]) = (low, low || track.LclM[i] > Cumulus.Reach * layer.DepthM ? 0 : cumulus.Cover);
        }

        track.MixedKelvins[i] = mixed;
        track.MaxScreenKelvins = double.IsNaN(track.MaxScreenKelvins) ? screen : Math.Max(screen, track.MaxScreenKelvins);
        track.MaxMixedKelvins = double.IsNaN(track.MaxMixedKelvins) ? mixed : Math.Max(mixed, track.MaxMixedKelvins);
        return screen;
    }

    private Cumulus Step(MixedLayer layer, int i, in HeatFlux flux, double inflowKelvinsPerHour)
    {
        var seconds = DayFrame.StepSeconds / (double)_parts;
        var assumptions = _frame.Assumptions;
        var before = layer.State;
        var virtualFlux = Buoyancy(flux, before);
        var heats = virtualFlux > 0;
        var cumulus = heats ? CumulusOver(layer, before, virtualFlux) : default;
        if (cumulus.MassFluxMs >= CloudWorthFollowing)
            FollowCloud(i, before, ConvectiveVelocity.Ms(virtualFlux, layer.DepthM, before.ThetaV));
        var stratiform = Math.Clamp(1 - ((_cloudTopM - layer.DepthM) / FreeRiseM), 0, 1);
        var forcing = new LayerForcing(
            heats ? flux.ThetaFlux : 0,
            heats ? flux.QFlux : 0,
            assumptions.WithoutCumulus ? 0 : cumulus.MassFluxMs,
            cumulus.ExcessQ,
            (assumptions.WarmingKelvinsPerHour + inflowKelvinsPerHour) / 3600,
            assumptions.MoisteningGkgPerHour / 3.6e6,
            (assumptions.CoolingKelvinsPerHour ?? 0) / 3600,
            _cloudRoomQ,
            Cumulus.MostOfEntrained(stratiform));
        for (var part = 0; part < _parts; part++)
            layer.Advance(seconds, forcing);
        if (cumulus.Cover <= 0)
            return cumulus;
        var after = layer.State;
        return cumulus.Told(
            CondensationLevel.M(after.Theta * _frame.Air.ToSurface, after.Q, _frame.Air.SurfaceHpa) / layer.DepthM, stratiform);
    }

    /// <summary>Every half-hour: how much water the layer of the broadest clouds takes.</summary>
    private void FollowCloud(int i, in LayerState state, double wStar)
    {
        if (i - _cloudStep < CloudEverySteps)
            return;
        var mixed = state.Theta * _frame.Air.ToSurface;
        var lcl = CondensationLevel.M(mixed, state.Q, _frame.Air.SurfaceHpa);
        var baseKelvins = mixed - (Air.DryLapseRate * lcl);
        var baseHpa = _frame.Air.SurfaceHpa * Math.Pow(baseKelvins / mixed, 1 / Air.Kappa);
        var top = CloudAscent.From(_column, lcl, baseHpa, baseKelvins, PickedUpdraft.CoreOverWStar * wStar, CloudAscent.BroadMixing);
        (_cloudStep, _cloudRoomQ, _cloudTopM) = (i, Math.Max(top.RoomQ, 1e-6), top.TopM);
    }

    private Cumulus CumulusOver(MixedLayer layer, in LayerState state, double virtualFlux)
    {
        if (!_frame.Air.HasMoisture || state.Q <= 0)
            return default;
        var mixed = state.Theta * _frame.Air.ToSurface;
        var lcl = CondensationLevel.M(mixed, state.Q, _frame.Air.SurfaceHpa);
        if (lcl > 3 * layer.DepthM)
            return default;
        var cumulus = Cumulus.Over(
            layer.DepthM,
            state,
            ConvectiveVelocity.Ms(virtualFlux, layer.DepthM, state.ThetaV),
            layer.EntrainmentMs,
            mixed,
            _frame.Air.SurfaceHpa,
            lcl);
        return cumulus with { MassFluxMs = cumulus.MassFluxMs * Cumulus.Reached(lcl / layer.DepthM) };
    }

    private HeatFlux Fluxes(int half, double screen, double shade, double factor)
    {
        if (_frame.Prescribed is { } prescribed)
            return HeatFlux.Of(factor * prescribed[half].SensibleWm2, prescribed[half].LatentWm2, _frame);
        var assumed = Math.Clamp(_frame.Cover[half] + (_member.CloudOktas / 8), 0, 1);
        var cover = 1 - ((1 - assumed) * (1 - (_cumulusShades ? shade : 0)));
        var sunlight = _member.SunFactor * Radiation.ClearSky(_frame.SinElevation[half]) * Radiation.Through(cover);
        var net = Radiation.Net(sunlight, _surface.Albedo, screen, cover);
        var ratio = Radiation.PsychrometricOverSlope(screen, _frame.Air.SurfaceHpa);
        var balance = EnergyBalance.Of(net, _surface, ratio);
        if (balance.SensibleWm2 <= 0 || factor == 1)
            return HeatFlux.Of(balance.SensibleWm2, balance.LatentWm2, _frame);
        // Not more than the driest ground gives, and what is left evaporates as far as the wettest ground lets it.
        var sensible = Math.Min(factor * balance.SensibleWm2, Math.Max(balance.SensibleWm2, EnergyBalance.Of(net, _driest, ratio).SensibleWm2));
        var left = Math.Max(0, balance.SensibleWm2 + balance.LatentWm2 - sensible);
        var wettest = EnergyBalance.Of(net, _surface with { Moisture = Math.Max(WettestMoisture, _surface.Moisture) }, ratio).LatentWm2;
        return HeatFlux.Of(sensible, Math.Min(left, Math.Max(0, wettest)), _frame);
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
