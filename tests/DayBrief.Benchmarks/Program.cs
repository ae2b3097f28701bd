using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using DayBrief.Benchmarks;

if (args is ["--cpu"])
{
    CpuTime.Print();
    return;
}

if (args is ["--cpu", "preview"])
{
    await CpuTime.PrintPreviewAsync();
    return;
}

// in this process: no second build, and the library is the optimised one that lies beside this program
var job = Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance);
BenchmarkSwitcher.FromAssembly(typeof(CpuTime).Assembly).Run(args, DefaultConfig.Instance.AddJob(job));
