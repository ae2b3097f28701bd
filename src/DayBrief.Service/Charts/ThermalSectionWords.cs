namespace DayBrief.Service.Charts;

/// <summary>What the section through the thermal shows, in words.</summary>
internal static class ThermalSectionWords
{
    public static string Describe(ThermalSectionInput input, IReadOnlyList<ThermalSlice> slices) => string.Join(' ', Sentences(input, slices));

    private static IEnumerable<string> Sentences(ThermalSectionInput input, IReadOnlyList<ThermalSlice> slices)
    {
        var say = input.In;
        var widest = slices.MaxBy(slice => slice.RadiusM)!;
        var strongest = slices.MaxBy(slice => slice.UpdraftMs)!;
        yield return say["Section along the wind, downwind to the right."];
        yield return say.Say($"It is widest at {say.Text(widest.HeightM)}; the core is strongest at {say.Text(strongest.HeightM)}, {say.Vertical(strongest.UpdraftMs)}.");
        yield return Lean(say, slices[0], slices[^1]);
        foreach (var flow in Flows(say, slices))
            yield return flow;
        if (input.Usable is var (bottom, top))
            yield return say.Say($"Usable from {say.AtLeast(bottom, input.LeastStep)} to {say.Text(top)}.");
        if (input.CloudBaseM is { } cloud)
            yield return say.Say($"Cloud base {say.Text(cloud)}.");
        if (input.DriftMs is { } drift)
            yield return drift < 0.25 ? say["It hardly drifts."] : say.Say($"It drifts {say.Length(60 * drift)} a minute.");
        yield return say["Heights are above the field."];
    }

    private static string Lean(Figures say, ThermalSlice foot, ThermalSlice head)
    {
        var lean = head.AxisM - foot.AxisM;
        if (Math.Abs(lean) < 10)
            return say["It stands upright."];
        var (length, from, to) = (say.Length(Math.Abs(lean)), say.Text(foot.HeightM), say.Text(head.HeightM));
        return lean > 0
            ? say.Say($"It leans downwind, {length} from {from} to {to}.")
            : say.Say($"It leans upwind, {length} from {from} to {to}.");
    }

    private static IEnumerable<string> Flows(Figures say, IReadOnlyList<ThermalSlice> slices)
    {
        var (most, least) = (slices.MaxBy(slice => slice.OutwardMs)!, slices.MinBy(slice => slice.OutwardMs)!);
        if (least.OutwardMs < -0.005)
            yield return say.Say($"Air is drawn in at {say.Text(least.HeightM)}, {say.Vertical(-least.OutwardMs)} at the edge.");
        if (most.OutwardMs > 0.005)
            yield return say.Say($"It is pushed out at {say.Text(most.HeightM)}, {say.Vertical(most.OutwardMs)}.");
    }
}
