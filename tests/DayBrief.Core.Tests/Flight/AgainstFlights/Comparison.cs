using System.Text;
using DayBrief.Flight.Centring;
using DayBrief.Flight.Gliders;
using DayBrief.Flight.Instruments;
using DayBrief.Flight.Thermals;
using DayBrief.Units;
using DayBrief.Updrafts;

namespace DayBrief.Flight.AgainstFlights;

/// <summary>Recorded and simulated flights side by side: the section "Against flights" of docs/verification.md.</summary>
internal sealed class Comparison(IReadOnlyList<ClimbRow> recorded, SimulatedClimbs simulated)
{
    public const string Heading = "## Against flights";

    private const double CircledAtM = 108;

    /// <summary>What the issue asks to be met: name, recorded, simulated.</summary>
    public IEnumerable<(string What, Spread Recorded, Spread Simulated)> Judged()
    {
        for (var turn = 0; turn < 6; turn++)
        {
            var which = turn;
            yield return Row($"turn {turn + 1} over best three", Long, climb => climb.ClimbMs[which] / climb.Best3Ms);
        }

        yield return Row("first turn within a tenth of the best three", Long, climb => climb.FirstGoodTurn);
        yield return Row("first three minutes over best three", climb => Long(climb) && climb.First3MinMs is not null, climb => climb.First3MinMs!.Value / climb.Best3Ms);
        foreach (var turn in new[] { 0, 1, 5 })
            yield return Row($"amplitude round the circle, turn {turn + 1}, m/s", climb => climb.Turns > turn, climb => climb.SwingMs[turn]);
        foreach (var turn in new[] { 0, 4 })
            yield return Row($"shift of the centre from turn {turn + 1} to {turn + 2}, radii", climb => climb.Turns > turn + 1, climb => climb.ShiftRadii[turn]);
    }

    /// <summary>Slopes, which have a stated range instead of quartiles: mean over the mix.</summary>
    public static IEnumerable<(string What, double From, double To, double Simulated)> Slopes()
    {
        double Over(Func<Thermal, Glider, double> figure) =>
            SimulatedClimbs.Thermals.Average(thermal => SimulatedClimbs.Gliders.Average(glider => figure(thermal, glider)));
        yield return ("lift at 108 m falls by, m/s per 100 m", 0.3, 0.9, Over((thermal, _) => 100 * thermal.At(thermal.Height).SlopePerS(CircledAtM)));
        yield return ("+10 m of radius cost, m/s", 0.035, 0.056, Over((thermal, glider) => Climb(thermal, Flown(glider)) - Climb(thermal, Wider(Flown(glider), 10))));
        yield return ("+5° of bank give, m/s", -0.009, 0.042, Over((thermal, glider) => Climb(thermal, Circle.At(glider, 42, Flown(glider).Speed)) - Climb(thermal, Flown(glider))));
    }

    public string Report()
    {
        var page = new StringBuilder();
        page.AppendLine(Heading).AppendLine();
        page.AppendLine(FormattableString.Invariant($"Made by `DAYBRIEF_WRITE_VERIFICATION=1 dotnet test tests/DayBrief.Core.Tests -c Release --filter FullyQualifiedName~AgainstFlightsTests` from `../shared/field` ({recorded.Count} recorded climbs of the given half; `DAYBRIEF_FIELD=folder` compares with others, without writing). Simulated: {simulated.Kept.Count} climbs in layers of 1300, 1600 and 1900 m (w\\* 1.6, 1.9, 2.2 m/s, cumulus at the layer's top), club, standard and open class at 42 kg/m², 1 s instrument heard, practised pilots. **Bank (37°) and speed (105 km/h) are imposed as flown and are not met by the model.** Median and quartiles; met: the simulated median within the flown quartiles."));
        page.AppendLine().AppendLine("| | flown | simulated | met |").AppendLine("|---|---|---|---|");
        foreach (var (what, flown, own) in Judged())
            page.AppendLine($"| {what} | {flown} | {own} | {(flown.Holds(own) ? "yes" : "**no**")} |");
        foreach (var (what, from, to, own) in Slopes())
            page.AppendLine(FormattableString.Invariant($"| {what} | {from} to {to} | {own:0.000} | {(own >= from && own <= to ? "yes" : "**no**")} |"));
        Others(page);
        Heights(page);
        Ways(page);
        Gap(page);
        return page.ToString().ReplaceLineEndings("\n");
    }

    private static bool Long(ClimbRow climb) => climb.Turns >= 6 && climb.Best3Ms > 0;

    private (string, Spread, Spread) Row(string what, Func<ClimbRow, bool> which, Func<ClimbRow, double> figure) =>
        (what, Spread.Of(recorded.Where(which).Select(figure)), Spread.Of(simulated.Kept.Where(which).Select(figure)));

    private void Others(StringBuilder page)
    {
        var best = Spread.Of(simulated.Kept.Where(Long).Select(climb => climb.Best3Ms)).Median;
        page.AppendLine().AppendLine("Told, not judged (flown figures of the folder's README):").AppendLine();
        page.AppendLine("| | flown | simulated |").AppendLine("|---|---|---|");
        page.AppendLine(FormattableString.Invariant($"| left before two turns; before three | 33; 44 % | {simulated.LeftBeforePct(2):0}; {simulated.LeftBeforePct(3):0} % |"));
        page.AppendLine($"| best three turns, m/s | {Spread.Of(recorded.Where(Long).Select(climb => climb.Best3Ms))} | {Spread.Of(simulated.Kept.Where(Long).Select(climb => climb.Best3Ms))} |");
        page.AppendLine($"| first turn of all tries over the usual best three | 0.65 [0.32, 0.96] | {Spread.Of(simulated.FirstTurns.Select(climb => climb / best))} |");
        page.AppendLine($"| good by turn 1, 2, 3, 4 | {Good(recorded)} | {Good(simulated.Kept)} |");
        page.AppendLine($"| difference from turn to turn, standard deviation, m/s | {Spread.Of(recorded.Where(Long).Select(climb => climb.TurnToTurnMs))} | {Spread.Of(simulated.Kept.Where(Long).Select(climb => climb.TurnToTurnMs))} |");
        page.AppendLine("| centres drift with, of the wind at their height | 95 % (93–98) | 100 % without shear: the column drifts upright; a plume from a fixed source would give 57 % |");
    }

    private static string Good(IEnumerable<ClimbRow> climbs)
    {
        var first = climbs.Where(Long).Select(climb => climb.FirstGoodTurn).ToArray();
        return string.Join(", ", Enumerable.Range(1, 4).Select(turn => FormattableString.Invariant($"{100.0 * first.Count(each => each <= turn) / first.Length:0}"))) + " %";
    }

    /// <summary>Net climb by share of the height at which gliders leave: the base, or where the climb under a blue sky has fallen to half a metre a second.</summary>
    private static void Heights(StringBuilder page)
    {
        page.AppendLine().AppendLine("Climb by share of the height at which gliders leave, over its mean from 0.2 to 0.9 (1600 m, w\\* 1.9 m/s; under a blue sky they leave at 0.92 of the layer, where 0.5 m/s are left):").AppendLine();
        page.AppendLine("| share | flown | under cumulus | blue | [Allen2006]'s mean thermal, lift alone |").AppendLine("|---|---|---|---|---|");
        var (depth, wStar, circle) = (Height.FromMetres(1600), Speed.FromMetresPerSecond(1.9), Flown(SimulatedClimbs.Gliders[1]));
        double Cumulus(double share) => PickedUpdraft.At(wStar, depth, Height.FromMetres(share * 1600), depth).LiftMs(circle.RadiusM) - circle.SinkMs;
        double Blue(double share) => PickedUpdraft.At(wStar, depth, Height.FromMetres(0.92 * share * 1600)).LiftMs(circle.RadiusM) - circle.SinkMs;
        static double Allen(double share) => Math.Cbrt(share) * (1 - (1.1 * share));
        static double Over(Func<double, double> climb, double share) => climb(share) / Enumerable.Range(4, 15).Average(step => climb(0.05 * step));
        foreach (var (share, flown) in new[] { (0.3, "0.82"), (0.5, "1.00–1.05"), (0.7, "1.00–1.05"), (0.9, "0.92") })
            page.AppendLine(FormattableString.Invariant($"| {share} | {flown} | {Over(Cumulus, share):0.00} | {Over(Blue, share):0.00} | {Over(Allen, share):0.00} |"));
    }

    private static void Ways(StringBuilder page)
    {
        var thermal = SimulatedClimbs.Thermals[1];
        var study = CentringStudy.Run(thermal, SimulatedClimbs.Gliders[0], Variometer.Quick, new() { BankDeg = 37, Speed = Speed.FromKilometresPerHour(105), WithErrors = false });
        page.AppendLine().AppendLine("The order of the ways, club class at 42 kg/m² in the 1600 m layer as flown. The recordings cannot judge it, nor reversing, nor beginners: they are of competition pilots who chose their own way.").AppendLine();
        page.AppendLine("| way | climb over three minutes, m/s | behind the best |").AppendLine("|---|---|---|");
        foreach (var way in study.Ranking)
            page.AppendLine(FormattableString.Invariant($"| {CentringWays.NameOf(way.Way)} | {way.Climb3MinMs.Mean:0.00} ± {way.Climb3MinMs.HalfWidth95:0.00} | {way.BehindBestMs.Mean:0.00} ± {way.BehindBestMs.HalfWidth95:0.00} |"));
    }

    private static void Gap(StringBuilder page)
    {
        var thermal = SimulatedClimbs.Thermals[1];
        var (club, loaded) = (GenericGlider.Of(GliderClass.Club), SimulatedClimbs.Gliders[0]);
        page.AppendLine().AppendLine("Why the advice is slower and flatter than what is flown (club class, 1600 m layer, centred):").AppendLine();
        page.AppendLine("| circle | bank, speed | climb, m/s |").AppendLine("|---|---|---|");
        void Row(string what, Circle circle) => page.AppendLine(FormattableString.Invariant($"| {what} | {circle.BankDeg:0}°, {circle.SpeedMs * 3.6:0} km/h | {Climb(thermal, circle):0.00} |"));
        Row("best at 15 % above the stall, light", CirclingOptimum.Find(club, thermal.At(thermal.Height).UpdraftMs).Circle);
        Row("as flown, light", Flown(club));
        Row("best at 15 % above the stall, 42 kg/m²", CirclingOptimum.Find(loaded, thermal.At(thermal.Height).UpdraftMs).Circle);
        Row("as flown, 42 kg/m²", Flown(loaded));
        var best = CirclingOptimum.Find(loaded, thermal.At(thermal.Height).UpdraftMs).Circle;
        page.AppendLine().AppendLine(FormattableString.Invariant($"Wing loading explains most of the gap: at 42 kg/m² the best circle is {best.BankDeg:0}° and {best.SpeedMs * 3.6:0} km/h. What is flown beyond that costs {Climb(thermal, best) - Climb(thermal, Flown(loaded)):0.00} m/s when centred and buys margin in gusts and among other gliders; the recordings cannot tell margin from taste. Light gliders are advised what is best for them, never nearer the stall than the limits allow."));
    }

    private static Circle Flown(Glider glider) => Circle.At(glider, 37, Speed.FromKilometresPerHour(105));

    private static Circle Wider(Circle circle, double byM) => Circle.At(
        circle.Glider, Math.Atan(circle.SpeedMs * circle.SpeedMs / (9.80665 * (circle.RadiusM + byM))) * 180 / Math.PI, circle.Speed);

    private static double Climb(Thermal thermal, Circle circle) => SwingTable.MeanClimbMs(thermal.At(thermal.Height), circle, 0);
}
