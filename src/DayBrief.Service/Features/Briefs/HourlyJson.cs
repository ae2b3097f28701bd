using System.Globalization;
using DayBrief.Days;
using DayBrief.Service.Infrastructure;

namespace DayBrief.Service.Features.Briefs;

/// <summary>Cloud from a local time on.</summary>
/// <param name="From">Local time, HH:mm.</param>
/// <param name="Oktas">Cover in eighths.</param>
public sealed record CloudFromJson(string? From, double? Oktas)
{
    internal static CloudFromJson Of(CloudFrom cloud) => new(cloud.Time.ToString("HH:mm", CultureInfo.InvariantCulture), cloud.Oktas);
}

/// <summary>Wind at the ground from a local time on.</summary>
/// <param name="From">Local time, HH:mm.</param>
/// <param name="DirectionDeg">True direction it blows from.</param>
/// <param name="SpeedKt">Mean speed.</param>
/// <param name="GustKt">Gusts; null when none are expected.</param>
public sealed record WindFromJson(string? From, double? DirectionDeg, double? SpeedKt, double? GustKt = null)
{
    internal static WindFromJson Of(WindFrom wind) => new(
        wind.Time.ToString("HH:mm", CultureInfo.InvariantCulture),
        wind.Wind.FromDegrees,
        Json.Rounded(wind.Wind.Speed.Knots, 2),
        Json.Rounded(wind.Gust?.Knots, 2));
}
