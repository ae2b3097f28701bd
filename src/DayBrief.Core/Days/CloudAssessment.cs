using DayBrief.BoundaryLayer;
using DayBrief.Soundings;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>Follows the day's cumulus: tops, spreading out, growing into showers.</summary>
/// <remarks>Spread-out: tops stopped by a stable layer with air within 5 K of its dew point beneath it. Overdevelopment:
/// the broadest clouds more than 2500 m deep; showers: deeper than 3000 m and colder than −10 °C at the top; thunder:
/// colder than −20 °C with CAPE over 300 J/kg, or a K index over 30 [FAA-13A] with showers. The thresholds are common
/// practice from memory, except the K index.</remarks>
internal sealed class CloudAssessment
{
    // Updraft at the base of the clouds that stand out, over w* (an assumption).
    private const double StrongOverWStar = 2;
    private const double DeepM = 2500;
    private const double ShowerM = 3000;
    private const double ShowerC = -10;
    private const double ThunderC = -20;
    private const double ThunderCape = 300;
    private const double ThunderK = 30;
    private const double SpreadDepressionK = 5;

    // Two heights nearer to each other than figures are rounded cannot be told apart.
    private const double BarelyM = 50;

    // Cloud over a shallower layer is fog or stratus, which the plume of a thermal says nothing about.
    private const double LeastDepthM = 300;

    private readonly DayFrame _frame;
    private readonly DayTrack _track;
    private readonly Headline _headline;
    private readonly Profile _profile;
    private readonly List<Phrase> _reasons = [];
    private double _broadestM;

    public CloudAssessment(DayFrame frame, DayTrack track, Headline headline, Profile profile)
    {
        (_frame, _track, _headline, _profile) = (frame, track, headline, profile);
        TopM = new double[track.DepthM.Length];
        Array.Fill(TopM, double.NaN);
    }

    /// <summary>Top of ordinary cumulus at each step, m above ground; NaN without.</summary>
    public double[] TopM { get; }

    private double HighestTopM => TopM.Where(double.IsFinite).DefaultIfEmpty(double.NaN).Max();

    public CloudOutlook Assess()
    {
        if (!_frame.Air.HasMoisture)
            return new() { Unknown = true, Reasons = [Phrase.Plain("The ascent has no dew points: cloud is not known.")] };
        var low = Low();
        if (_headline.FirstCloud < 0)
            return new() { Dry = true, Low = low, Reasons = [.. _reasons, DryReason()] };
        var (over, shower, thunder) = (-1, -1, -1);
        for (var i = 0; i < TopM.Length; i++)
        {
            if (!HasCloud(i))
                continue;
            if (_track.DepthM[i] < LeastDepthM)
                continue;
            TopM[i] = Ascent(i, CloudAscent.OrdinaryMixing).TopM;
            if (i % 6 == 0 && (over < 0 || shower < 0 || thunder < 0))
                Deepest(i, ref over, ref shower, ref thunder);
        }

        var spread = over < 0 && SpreadsOut();
        return new()
        {
            First = _frame.Times[_headline.FirstCloud],
            FirstBase = Height.FromMetres(_headline.FirstCloudBaseM),
            Base = BaseAtStrongest(),
            Low = low,
            BroadestTop = over >= 0 ? Height.FromMetres(_broadestM) : null,
            Top = HighestTopM is var top && double.IsFinite(top) ? Height.FromMetres(top) : null,
            MaxCoverOktas = 8 * _track.CumulusCover.Where(double.IsFinite).Max(Cumulus.Projected),
            SpreadOut = spread,
            Overdevelopment = over >= 0 ? _frame.Times[over] : null,
            Showers = shower >= 0 ? _frame.Times[shower] : null,
            Thunder = thunder >= 0 ? _frame.Times[thunder] : null,
            Reasons = _reasons,
        };
    }

    /// <summary>Fog or low stratus of at least a quarter of an hour; the last step of it ends it.</summary>
    private LowCloudOutlook? Low()
    {
        var steps = Enumerable.Range(0, _track.LowCloud.Length).Where(i => _track.LowCloud[i]).ToArray();
        if (steps.Length < 3)
            return null;
        var known = steps.Where(i => double.IsFinite(_track.LclM[i])).Select(i => _track.LclM[i]).DefaultIfEmpty(0).Min();
        var (lowest, last) = (Height.FromMetres(known), steps[^1]);
        var clears = last + 1 < _track.LowCloud.Length && double.IsFinite(_track.LclM[last + 1]) ? _frame.Times[last + 1] : (DateTimeOffset?)null;
        var low = new LowCloudOutlook(LowCloud.IsFog(known), lowest, _frame.Times[steps[0]], clears);
        _reasons.Add((low.IsFog, clears) switch
        {
            (true, { } at) => Phrase.Of($"Fog until about {at:HH:mm}: the air at the ground is saturated before the sun has stirred it."),
            (true, null) => Phrase.Of($"Fog: the sun does not clear it by itself."),
            (false, { } at) => Phrase.Of($"Low stratus at {lowest} until about {at:HH:mm}: the lowest air is saturated before the sun has stirred it."),
            (false, null) => Phrase.Of($"Low stratus at {lowest}: the sun does not clear it by itself."),
        });
        return low;
    }

    private bool HasCloud(int i) => _track.CumulusCover[i] >= Headline.FirstCloudShare;

    /// <summary>Of the usable part of the day where there is one: in the shallow air at sunrise the two heights say nothing.</summary>
    private Phrase DryReason()
    {
        var usable = _headline.FirstUsable >= 0;
        var nearest = Enumerable.Range(0, _track.DepthM.Length)
            .Where(i => double.IsFinite(_track.DepthM[i]) && double.IsFinite(_track.LclM[i]))
            .Where(i => usable ? i >= _headline.FirstUsable && i <= _headline.Last : _track.DepthM[i] >= LeastDepthM)
            .OrderBy(i => _track.LclM[i] - _track.DepthM[i])
            .Cast<int?>().FirstOrDefault();
        if (nearest is not { } i)
            return Phrase.Of($"No cumulus: no thermals.");
        return _track.LclM[i] - _track.DepthM[i] < BarelyM
            ? Phrase.Of($"No cumulus: at best thermals only just reach {Height.FromMetres(_track.LclM[i])}, where they would condense.")
            : Phrase.Of($"No cumulus: when thermals come nearest, they reach {Height.FromMetres(_track.DepthM[i])} and would need {Height.FromMetres(_track.LclM[i])} to condense.");
    }

    private Height? BaseAtStrongest()
    {
        var at = _headline.Strongest >= 0 && HasCloud(_headline.Strongest)
            ? _headline.Strongest
            : Enumerable.Range(0, TopM.Length).Last(i => HasCloud(i));
        return Height.FromMetres(_track.LclM[at]);
    }

    private CloudAscent Ascent(int i, double mixing)
    {
        var mixed = _track.Theta[i] * _frame.Air.ToSurface;
        var baseKelvins = mixed - (Air.DryLapseRate * _track.LclM[i]);
        var baseHpa = _frame.Air.SurfaceHpa * Math.Pow(baseKelvins / mixed, 1 / Air.Kappa);
        return CloudAscent.From(_frame.Air.Column, _track.LclM[i], baseHpa, baseKelvins, StrongOverWStar * _track.WStar[i], mixing);
    }

    private void Deepest(int i, ref int over, ref int shower, ref int thunder)
    {
        var broad = Ascent(i, CloudAscent.BroadMixing);
        var (depth, topC) = (broad.TopM - _track.LclM[i], broad.TopKelvins - Temperature.ZeroCelsius);
        var grown = Height.FromMetres(depth);
        var deep = broad.OutOfAscent ? Phrase.Of($"at least {grown}") : Phrase.Of($"{grown}");
        if (over < 0 && depth >= DeepM)
        {
            over = i;
            _broadestM = broad.TopM;
            _reasons.Add(Phrase.Of($"Overdevelopment from {_frame.Times[i]:HH:mm}: the broadest clouds grow {deep} deep, tops {Rounding.Celsius(topC):0} °C."));
        }

        if (shower < 0 && depth >= ShowerM && topC <= ShowerC)
        {
            shower = i;
            _reasons.Add(Phrase.Of($"Showers from {_frame.Times[i]:HH:mm}: clouds {deep} deep, tops {topC:0} °C (−10 °C or colder)."));
        }

        if (thunder < 0 && shower >= 0 && topC <= ThunderC)
            Thunder(i, ref thunder);
    }

    private void Thunder(int i, ref int thunder)
    {
        var kelvins = _track.Theta[i] * _frame.Air.ToSurface;
        var dewPoint = Humidity.DewPointCelsius(_track.Q[i], _frame.Air.SurfaceHpa);
        var energy = ConvectiveEnergy.Of(
            _profile, Temperature.FromKelvins(kelvins), Temperature.FromCelsius(Math.Min(dewPoint, kelvins - Temperature.ZeroCelsius)));
        var k = KIndex.Of(_profile);
        if (energy.CapeJkg < ThunderCape && !(k > ThunderK))
            return;
        thunder = i;
        _reasons.Add(k is { } known
            ? Phrase.Of($"Thunder possible from {_frame.Times[i]:HH:mm}: CAPE {energy.CapeJkg:0} J/kg, inhibition {energy.CinJkg:0} J/kg, K index {known:0}.")
            : Phrase.Of($"Thunder possible from {_frame.Times[i]:HH:mm}: CAPE {energy.CapeJkg:0} J/kg, inhibition {energy.CinJkg:0} J/kg."));
    }

    private bool SpreadsOut()
    {
        var top = HighestTopM;
        foreach (var inversion in Inversion.Of(_profile))
        {
            var baseM = inversion.Base.Metres - _frame.Air.GroundM;
            if (baseM < 300 || !(Math.Abs(top - baseM) <= Math.Max(300, (inversion.Top.Metres - inversion.Base.Metres) + 100)))
                continue;
            if (_profile.DewPointAt(inversion.BasePressure) is not { } dewPoint || _profile.TemperatureAt(inversion.BasePressure) is not { } air)
                continue;
            var spread = (air - dewPoint).Kelvins;
            if (spread > SpreadDepressionK)
                continue;
            _reasons.Add(Phrase.Of($"Cumulus spreads out: its tops stop under the inversion at {Height.FromMetres(baseM)} ({inversion.Strength.Kelvins:0.#} K), where the air is only {spread:0.#} K from saturation."));
            return true;
        }

        return false;
    }
}
