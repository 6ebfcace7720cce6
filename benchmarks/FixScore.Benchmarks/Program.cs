using BenchmarkDotNet.Running;
using FixScore.Benchmarks.Acceptability;
using FixScore.Benchmarks.Lines;
using FixScore.Benchmarks.Plugins;
using FixScore.Benchmarks.RouteProofs;
using FixScore.Benchmarks.Swaps;

if (args is ["routes", .. var rest]) RouteProofs.Run(rest);
else if (args is ["swaps", .. var more]) SwapBenchmarks.Run(more);
else if (args is ["acceptability", .. var others]) AcceptabilityBenchmark.Run(others);
else if (args is ["lines", .. var sizes]) LineBenchmark.Run(sizes);
else if (args is ["plugins", .. var tool]) PluginBenchmark.Run(tool);
else BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
