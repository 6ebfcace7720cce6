using BenchmarkDotNet.Running;
using FixScore.Benchmarks.RouteProofs;

if (args is ["routes", .. var rest]) RouteProofs.Run(rest);
else BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
