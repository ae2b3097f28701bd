using DayBrief.BoundaryLayer;
using DayBrief.Soundings;

namespace DayBrief.Days;

/// <summary>How the air over a site changes through the day, from profiles of later hours.</summary>
/// <remarks>Only the change between the profiles is taken, so that what the ascent measured stays; their sinking is in it. Within a
/// profile's own stirred layer (parcel method, surface air plus 0.5 K) its change is heating from the ground, which the day
/// computes itself: there the change just above counts. Linear in time between profiles.</remarks>
internal sealed class AirByHour
{
    /// <summary>The air aloft is known this much better with profiles of the day, as a share of its spread (a choice).</summary>
    public const double SpreadLeft = 0.6;

    private const double StirredK = 0.5;
    private const double AboveM = 250;

    private readonly (DateTimeOffset At, Column Column, double StirredM, LayerWind? Winds)[] _profiles;

    private AirByHour((DateTimeOffset At, Column Column, double StirredM, LayerWind? Winds)[] profiles) => _profiles = profiles;

    /// <summary>From when, until when and how many.</summary>
    public (DateTimeOffset From, DateTimeOffset To, int Count) Extent => (_profiles[0].At, _profiles[^1].At, _profiles.Length);

    /// <summary>Null where fewer than two profiles have a time; the ascent counts as the first where it is earlier than all.</summary>
    public static AirByHour? Of(Sounding ascent, DateTimeOffset? valid, Site site, IEnumerable<Sounding> later)
    {
        var all = later.Where(sounding => sounding.Source.ValidAt is not null).OrderBy(sounding => sounding.Source.ValidAt).ToList();
        if (valid is { } at && all.Count > 0 && at < all[0].Source.ValidAt)
            all.Insert(0, ascent.With(ascent.Source with { ValidAt = at }));
        return all.Count < 2 ? null : new([.. all.Select(sounding => Profiled(sounding, site))]);
    }

    /// <summary>The column at a moment: as at the first step, changed as the profiles have changed since.</summary>
    public Column At(Column start, DateTimeOffset first, DateTimeOffset moment)
    {
        var (then, now) = (Between(first), Between(moment));
        return start.Changed(
            z => Value(now, z, column => column.Theta) - Value(then, z, column => column.Theta),
            z => Value(now, z, column => column.Q) - Value(then, z, column => column.Q));

        double Value((int Low, double Share) at, double z, Func<ColumnValue, double> of)
        {
            var height = Math.Max(z, Math.Max(Stirred(now), Stirred(then)));
            double In(int i) => of(_profiles[i].Column.At(Math.Min(height, _profiles[i].Column.TopM)));
            return In(at.Low) + (at.Share * (In(at.Low + 1) - In(at.Low)));
        }
    }

    /// <summary>The winds of the nearest profile that has some; null when none has.</summary>
    public LayerWind? WindsAt(DateTimeOffset moment) =>
        _profiles.Where(profile => profile.Winds is not null).OrderBy(profile => (profile.At - moment).Duration()).FirstOrDefault().Winds;

    private double Stirred((int Low, double Share) at) =>
        _profiles[at.Low].StirredM + (at.Share * (_profiles[at.Low + 1].StirredM - _profiles[at.Low].StirredM));

    private (int Low, double Share) Between(DateTimeOffset moment)
    {
        var low = Math.Clamp(Array.FindLastIndex(_profiles, profile => profile.At <= moment), 0, _profiles.Length - 2);
        var span = _profiles[low + 1].At - _profiles[low].At;
        return (low, span > TimeSpan.Zero ? Math.Clamp((moment - _profiles[low].At) / span, 0, 1) : 0);
    }

    private static (DateTimeOffset At, Column Column, double StirredM, LayerWind? Winds) Profiled(Sounding sounding, Site site)
    {
        var profile = Profile.Of(sounding);
        var over = SiteColumn.Of(profile, site, []);
        var ground = over.Column.At(0).Theta + StirredK;
        var stirred = 0.0;
        while (stirred < over.Column.TopM - AboveM && over.Column.At(stirred).Theta <= ground)
            stirred += 20;
        return (sounding.Source.ValidAt!.Value, over.Column, stirred > 100 ? stirred + AboveM : 0, LayerWind.Over(sounding, profile, over.GroundM));
    }
}
