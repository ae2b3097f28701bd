namespace DayBrief.Service.Charts;

/// <summary>What the section through the thermal shows, in words.</summary>
internal static class ThermalSectionWords
{
    public static string Describe(ThermalSectionInput input, IReadOnlyList<ThermalSlice> slices)
    {
        var unit = input.In;
        var (foot, head) = (slices[0], slices[^1]);
        var widest = slices.MaxBy(slice => slice.RadiusM)!;
        var strongest = slices.MaxBy(slice => slice.UpdraftMs)!;
        var text = $"Section along the wind, downwind to the right. The lift is {Across(unit, widest)} across at {unit.Text(widest.HeightM)};"
            + $" the core is strongest at {unit.Text(strongest.HeightM)}, {unit.Vertical(strongest.UpdraftMs)}.";
        var lean = head.AxisM - foot.AxisM;
        text += Math.Abs(lean) < 10
            ? " It stands upright."
            : $" It leans {(lean > 0 ? "downwind" : "upwind")}, {Length(unit, Math.Abs(lean))} from {unit.Text(foot.HeightM)} to {unit.Text(head.HeightM)}.";
        text += Flows(unit, slices);
        if (input.Usable is var (bottom, top))
            text += $" Usable from {unit.Text(bottom)} to {unit.Text(top)}.";
        if (input.CloudBaseM is { } cloud)
            text += $" Cloud base {unit.Text(cloud)}.";
        if (input.DriftMs is { } drift)
            text += drift < 0.25 ? " It hardly drifts." : $" It drifts {unit.Length(60 * drift, 50)} a minute.";
        return $"{text} Heights are above the field.";
    }

    private static string Flows(Figures unit, IReadOnlyList<ThermalSlice> slices)
    {
        var (most, least) = (slices.MaxBy(slice => slice.OutwardMs)!, slices.MinBy(slice => slice.OutwardMs)!);
        var text = "";
        if (least.OutwardMs < -0.005)
            text += $" Air is drawn in at {unit.Text(least.HeightM)}, {unit.Vertical(-least.OutwardMs, "0.0#")} at the edge.";
        if (most.OutwardMs > 0.005)
            text += $" It is pushed out at {unit.Text(most.HeightM)}, {unit.Vertical(most.OutwardMs, "0.0#")}.";
        return text;
    }

    private static string Across(Figures unit, ThermalSlice slice) => Length(unit, 2 * slice.RadiusM);

    private static string Length(Figures unit, double metres) =>
        unit.Length(metres, 10);
}
