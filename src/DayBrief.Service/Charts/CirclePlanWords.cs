using System.Globalization;

namespace DayBrief.Service.Charts;

/// <summary>What the plan of centring shows, in words.</summary>
internal static class CirclePlanWords
{
    public static string Describe(CirclePlanInput input, CirclePlanGeometry geometry)
    {
        string Length(double metres) => $"{Math.Round(input.Unit.FromMetres(metres) / 5) * 5:N0} {input.Unit.Name()}";
        var text = string.Create(CultureInfo.InvariantCulture, $"Seen from above, to scale, in a {(input.TurnsRight ? "right" : "left")} turn. Lift reaches {Length(input.Contours.Max(c => c.RadiusM))} from the core.")
            + $" The circle has a radius of {Length(input.CircleRadiusM)}; its centre is {Length(input.OffsetM)} from the core."
            + string.Create(CultureInfo.InvariantCulture, $" The weakest air is felt {input.LagDeg:0}° of turn after it was passed{Seconds(input.Seconds?.Lag)};")
            + string.Create(CultureInfo.InvariantCulture, $" begin to roll out {input.RollOutAfterDeg:0}° after that{Seconds(input.Seconds?.Wait)}, wings level{For(input.Seconds?.Level)},")
            + $" and turn the same way again: the circle has moved {Length(input.ShiftM)} and its centre is {Length(geometry.NewOffsetM)} from the core.";
        return input.Wind is { } wind ? $"{text} Wind {WindByHeight.Say(wind)}." : text;
    }

    private static string Seconds(double? seconds) =>
        seconds is { } s ? string.Create(CultureInfo.InvariantCulture, $" ({s:0.#} s)") : "";

    private static string For(double? seconds) =>
        seconds is { } s ? string.Create(CultureInfo.InvariantCulture, $" for {s:0.#} s") : "";
}
