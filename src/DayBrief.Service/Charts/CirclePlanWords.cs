namespace DayBrief.Service.Charts;

/// <summary>What the plan of centring shows, in words.</summary>
internal static class CirclePlanWords
{
    public static string Describe(CirclePlanInput input, CirclePlanGeometry geometry) => string.Join(' ', Sentences(input, geometry));

    private static IEnumerable<string> Sentences(CirclePlanInput input, CirclePlanGeometry geometry)
    {
        var say = input.In;
        string Length(double metres) => say.Length(metres);
        var edge = Length(input.Contours.Max(contour => contour.RadiusM));
        yield return input.TurnsRight
            ? say.Say($"Seen from above, to scale, in a right turn. Lift reaches {edge} from the core.")
            : say.Say($"Seen from above, to scale, in a left turn. Lift reaches {edge} from the core.");
        yield return say.Say($"The circle is drawn to the same scale; its centre is {Length(input.OffsetM)} from the core.");
        yield return input.Seconds is var (lag, wait, level)
            ? say.Say($"The weakest air is felt {input.LagDeg:0}° of turn after it was passed ({lag:0.0} s); begin to roll out {input.RollOutAfterDeg:0}° after that ({wait:0.0} s), wings level for {level:0.0} s,")
            : say.Say($"The weakest air is felt {input.LagDeg:0}° of turn after it was passed; begin to roll out {input.RollOutAfterDeg:0}° after that, wings level,");
        yield return say.Say($"and turn the same way again: the circle has moved {Length(input.ShiftM)} and its centre is {Length(geometry.NewOffsetM)} from the core.");
        if (input.Wind is { } wind)
            yield return say.Say($"Wind {WindByHeight.Say(wind, say)}.");
    }
}
