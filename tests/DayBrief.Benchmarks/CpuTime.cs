using DayBrief.Flight.Centring;

namespace DayBrief.Benchmarks;

/// <summary>The same benchmarks by processor time instead of the clock, for machines that others use at the same time:
/// <c>--cpu</c>. The best of several runs, since a neighbour can only slow one down.</summary>
internal static class CpuTime
{
    private const int StepsPerRun = 512 * 300 * 5;

    public static void Print()
    {
        Console.WriteLine("million encounter-steps per second of one core");
        foreach (var way in new[] { CentringWay.Hold, CentringWay.BySwing })
        {
            var kernel = new EncounterSteps { Way = way };
            kernel.Prepare();
            Console.WriteLine($"  {way}: scalar {Rate(kernel.Scalar, StepsPerRun, 2):f1}, eight wide {Rate(kernel.EightWide, StepsPerRun, 20):f1}, sixteen wide {Rate(kernel.SixteenWide, StepsPerRun, 40):f1}");
        }

        var limit = new VectorLimit();
        Console.WriteLine("milliard single-precision operations per second of one core");
        Console.WriteLine($"  multiply and add: 256 bit {Rate(() => limit.MultiplyAndAdd256(), 10_000 * 8 * 2 * 8, 400) / 1e3:f1}, 512 bit {Rate(() => limit.MultiplyAndAdd512(), 10_000 * 8 * 2 * 16, 400) / 1e3:f1}");
        Console.WriteLine($"  divide: 512 bit {Rate(() => limit.Divide512(), 10_000 * 8 * 16, 400) / 1e3:f1}");
        var section = new TechniqueSection();
        Console.WriteLine($"technique section, five classes: {1e3 / Rate(() => section.AllClasses(), 1_000_000, 1):f0} ms of processor time, on two threads");
    }

    /// <summary>Milliseconds of processor time on all threads, client and service together.</summary>
    public static async Task PrintPreviewAsync()
    {
        await using var preview = new PreviewBenchmarks();
        await preview.Prepare();
        (string Name, Action Run)[] parts =
        [
            ("ascent read", () => preview.Ascent()),
            ("day computed", () => preview.Day()),
            ("outcome rendered", () => preview.Outcome().Wait()),
            ("phone page rendered", () => preview.PhonePage().Wait()),
            ("sheet as PDF", () => preview.SheetAsPdf()),
            ("other words over HTTP", () => preview.OtherWords().Wait()),
            ("another day over HTTP", () => preview.OtherDay().Wait()),
        ];
        foreach (var (name, run) in parts)
            Console.WriteLine($"  {name}: {1e-3 / Rate(run, 1, 5):f2} ms");
    }

    /// <summary>Millions of operations per second of processor time.</summary>
    private static double Rate(Action run, double operations, int runs)
    {
        run();
        var best = double.MaxValue;
        for (var trial = 0; trial < 7; trial++)
        {
            var before = Environment.CpuUsage.TotalTime;
            for (var each = 0; each < runs; each++)
                run();
            best = Math.Min(best, (Environment.CpuUsage.TotalTime - before).TotalSeconds / runs);
        }

        return operations / best / 1e6;
    }
}
