using System.Reflection;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using GuideBuilder.Benchmarks;

// In this process, because a project made by the benchmark runner would not find the artifacts folder of this one.
var config = ManualConfig.Create(DefaultConfig.Instance)
    .AddJob(Job.ShortRun.WithIterationCount(15).WithToolchain(InProcessEmitToolchain.Instance));

Ratios.Print(BenchmarkSwitcher.FromAssembly(Assembly.GetExecutingAssembly()).Run(args, config));
