using DayBrief.Reports;
using DayBrief.Soundings;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Days;

/// <summary>The day's brief: one model for page, sheet and JSON. Null is "not known" or "does not happen".</summary>
public sealed record Brief
{
    /// <summary>The field.</summary>
    public required Site Site { get; init; }

    /// <summary>Its local date.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Who prepared it.</summary>
    public string? PreparedBy { get; init; }

    /// <summary>When; null when nobody says so.</summary>
    public required DateTimeOffset? PreparedAt { get; init; }

    /// <summary>The ascent and what it tells by itself.</summary>
    public required SoundingAnalysis Ascent { get; init; }

    /// <summary>When the ascent is valid; null when it does not say.</summary>
    public DateTimeOffset? AscentValidAt { get; init; }

    /// <summary>How far from the field the balloon went up, km; null when not known.</summary>
    public double? AscentDistanceKm { get; init; }

    /// <summary>An observation at the field or near it; null when none was given.</summary>
    public AerodromeReport? Observation { get; init; }

    /// <summary>A forecast (TAF) for the field or near it; null when none was given.</summary>
    public AerodromeForecast? Forecast { get; init; }

    /// <summary>The computed day.</summary>
    public required ConvectiveDay Day { get; init; }

    /// <summary>How old the ascent is at a moment; null when it does not say when it was made.</summary>
    public TimeSpan? AscentAgeAt(DateTimeOffset? moment) => moment - AscentValidAt;

    /// <summary>Greatest usable height above the field.</summary>
    public Height? UsableTop => Day.MaxUsableTop;

    /// <summary>Highest screen temperature of the computed day.</summary>
    public Temperature? MaxTemperature =>
        Day.Steps.Max(step => step.SurfaceTemperatureC) is { } max ? Temperature.FromCelsius(max) : null;

    /// <summary>Lowest height of 0 °C above the field; null when the ascent does not cross it.</summary>
    public Height? FreezingLevel =>
        Ascent.FreezingLevel is { } level ? Height.FromMetres(level.Metres - FieldAboveAscentM) : null;

    /// <summary>Density altitude of the field at the day's highest temperature, by QNH where known, else by the ascent's pressure.</summary>
    public Altitude? DensityAltitude =>
        MaxTemperature is { } max ? DensityAltitudeAt(max) : null;

    /// <summary>The same at another temperature.</summary>
    internal Altitude? DensityAltitudeAt(Temperature temperature) =>
        PressureAtField is { } pressure ? Thermodynamics.DensityAltitude.Of(pressure, temperature) : null;

    /// <summary>Height of the field above the ascent's lowest level; 0 where the ascent's own height is not known.</summary>
    public double FieldAboveAscentM =>
        Ascent.Profile.Elevation is { } ground ? (Site.Elevation - ground).Metres : 0;

    /// <summary>QNH of the day: as assumed, else as observed; null when neither is known.</summary>
    public Pressure? Qnh => Day.Assumptions.Qnh ?? Observation?.Qnh;

    private Pressure? PressureAtField =>
        Qnh is { } qnh
            ? Pressure.FromHectopascals(Soundings.Quality.StandardAtmosphere.GroundPressureHpa(qnh.Hectopascals, Site.Elevation.Metres))
            : FieldAboveAscentM >= 0
            ? Ascent.Profile.PressureAt(Height.FromMetres(FieldAboveAscentM))
            : Pressure.FromHectopascals(Ascent.Profile.SurfacePressure.Hectopascals
                * Math.Exp(-FieldAboveAscentM * Air.Gravity / (Air.GasConstant * Ascent.Profile.SurfaceTemperature.Kelvins)));

    /// <summary>Makes the brief.</summary>
    /// <param name="order">What it is made of.</param>
    /// <exception cref="InvalidSoundingException">The day cannot be computed from this ascent.</exception>
    public static Brief Prepare(BriefOrder order)
    {
        var sounding = Observed(order.Sounding, order.Observation);
        var analysis = SoundingAnalysis.Of(sounding, elevation: sounding.Source.Elevation);
        return new()
        {
            Site = order.Site,
            Date = order.Date,
            PreparedBy = order.PreparedBy,
            PreparedAt = order.PreparedAt,
            Ascent = analysis,
            Observation = order.Observation,
            Forecast = order.Forecast,
            AscentValidAt = sounding.Source.ValidAt,
            AscentDistanceKm = sounding.Source.Position?.KilometresTo(order.Site.Position),
            Day = ConvectiveDay.Compute(sounding, order.Site, order.Date, order.Assumptions, order.Stopping),
        };
    }

    /// <summary>The ascent corrected to an observation within 90 minutes of it; a later one belongs to a day already warmed.</summary>
    private static Sounding Observed(Sounding sounding, AerodromeReport? observation) =>
        observation is { Temperature: { } temperature, Time: var time }
        && sounding.Source.ValidAt is { } valid
        && time.NearestTo(valid) is { } at
        && (at - valid).Duration() <= TimeSpan.FromMinutes(90)
            ? SurfaceCorrection.Apply(sounding, temperature, observation.DewPoint)
            : sounding;

    /// <summary>Wind at a height above the field; null where the ascent reports none.</summary>
    public Wind? WindAt(Height height) => Day.Winds?.At(height);
}
