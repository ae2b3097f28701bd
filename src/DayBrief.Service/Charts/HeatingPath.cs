using DayBrief.Soundings;
using DayBrief.Thermodynamics;
using DayBrief.Units;

namespace DayBrief.Service.Charts;

/// <summary>How far air of one heating stage rises dry: to the ascent, or until it condenses before that.</summary>
/// <param name="Top">Where its dry adiabat ends; null when it leaves the ascent's top first or cannot start.</param>
/// <param name="Celsius">Its temperature there.</param>
/// <param name="Condenses">Whether cloud forms there.</param>
internal readonly record struct HeatingPath(Pressure? Top, double Celsius, bool Condenses)
{
    public static HeatingPath Of(Profile profile, Temperature surface, Temperature? dewPoint)
    {
        var condensation = dewPoint is { } moist
            ? LiftedCondensation.Of(profile.SurfacePressure, surface, moist).Pressure
            : (Pressure?)null;
        var dry = DryTop.From(profile, surface)?.Pressure;
        var starts = surface >= profile.SurfaceTemperature;
        var condenses = starts && condensation is { } cloud && cloud >= profile.TopPressure && (dry is null || cloud > dry);
        var top = condenses ? condensation : dry;
        return new(
            top,
            top is { } p ? DryAdiabat.Moved(surface, profile.SurfacePressure, p).Celsius : surface.Celsius,
            condenses);
    }
}
