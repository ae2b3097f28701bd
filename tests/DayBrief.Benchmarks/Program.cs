using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

// in this process: the kernel's results depend on the compiled code here, and no second build is needed
var job = Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance);
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args, DefaultConfig.Instance.AddJob(job));
