using DayBrief.Days;
using DayBrief.Scores;
using DayBrief.Soundings;
using DayBrief.Units;

namespace DayBrief.Service.Features.Verifying;

/// <summary>What the computed day tells of the figures that came true, at the times at which they did. The ranges of a moment are
/// those of the day, in proportion.</summary>
internal sealed class DayTold(ConvectiveDay day, Sounding morning, DayTruth truth)
{
    private readonly Profile _profile = Profile.Of(morning);

    public Told? DepthM => truth.DepthM is { } seen && Mean(seen, step => step.MixedLayerDepthM, day.MaxDepth?.Metres) is { } depth
        ? Ranged(depth, day.Ranges?.MaxDepthM, Parcel(seen))
        : null;

    public Told? TopM => day.MaxUsableTop is { } top ? Ranged(top.Metres, day.Ranges?.MaxUsableTopM, Parcel(new(0, []))) : null;

    public Told? BaseM => truth.BaseM is { } seen && Mean(seen, step => step.CloudBaseAglM, day.Cloud.Base?.Metres) is { } cloud
        ? Ranged(cloud, day.Ranges?.FirstCloudBaseM, Spread(seen))
        : null;

    public Told? ClimbMs => truth.ClimbMs is { } seen && Mean(seen, step => step.ClimbMs, day.MaxClimb?.MetresPerSecond) is { } climb
        ? Ranged(climb, day.Ranges?.MaxClimbMs, parcel: null)
        : null;

    public Told? FirstMin => Time(day.Times.FirstUsable, day.Ranges?.FirstUsable);

    public Told? LastMin => Time(day.Times.Last, day.Ranges?.Last);

    private Told? Time(DateTimeOffset? told, DayRange<DateTimeOffset>? range)
    {
        double? Minutes(DateTimeOffset? at) => at is { } time ? DayTruth.Minutes(time, day.Site) : null;
        return Minutes(told) is { } value ? new Told(value, Minutes(range?.P10), Minutes(range?.P90)) : null;
    }

    /// <summary>Mean over the moments at which it was seen; where none is known, the figure of the day.</summary>
    private double? Mean(Truth seen, Func<DayStep, double?> figure, double? ofDay)
    {
        if (seen.At.Count == 0)
            return ofDay;
        var values = seen.At.Select(at => day.Steps.MinBy(step => (step.Time - at).Duration())).OfType<DayStep>().Select(figure).OfType<double>().ToArray();
        return values.Length == 0 ? null : values.Average();
    }

    private static Told Ranged(double value, DayRange<double>? range, double? parcel)
    {
        var share = range?.P50 is { } middle and > 0 ? value / middle : 1;
        return new(value, range?.P10 * share, range?.P90 * share, parcel);
    }

    /// <summary>The plain parcel method: the dry adiabat from the same temperature, on the morning's ascent.</summary>
    private double? Parcel(Truth seen)
    {
        var warmest = day.Steps.Max(step => step.SurfaceTemperatureC);
        return Mean(seen, step => step.SurfaceTemperatureC, warmest) is { } celsius
            ? DryTop.From(_profile, Temperature.FromCelsius(celsius))?.Height.Metres
            : null;
    }

    /// <summary>The rule of thumb for the base: 125 m for each kelvin between temperature and the morning's dew point.</summary>
    private double? Spread(Truth seen) =>
        _profile.SurfaceDewPoint is { } dew && Mean(seen, step => step.SurfaceTemperatureC, null) is { } celsius
            ? Math.Max(0, 125 * (celsius - dew.Celsius))
            : null;
}
