using System.Diagnostics;
using FixScore.Records;
using FixScore.Tests.Samples;

namespace FixScore.Benchmarks.Plugins;

/// <summary>What plugin files cost: to load, to call, and at the start of the tool.</summary>
/// <remarks><c>plugins [FixScore.Cli.dll]</c>. Without the tool's file the start is not measured.</remarks>
static class PluginBenchmark
{
    const int Rounds = 31;

    static readonly PluginTerms Trusting = new() { TrustUnpinned = true };

    public static void Run(string[] args)
    {
        Loading();
        Calling();
        if (args is [var tool]) Starting(tool);
    }

    static void Loading()
    {
        var first = Milliseconds(() => Load(SamplePlugins.Marks));
        var next = Median(() => Load(SamplePlugins.Marks));
        var compiledIn = Median(() => new CatalogueBuilder().Add(new DoNothingPlugin()).Build());
        Console.WriteLine(FormattableString.Invariant($"load a plugin with one dependency: first {first:0.0} ms, then {next:0.00} ms (median of {Rounds}); compiled in {compiledIn:0.0000} ms"));
    }

    static void Calling()
    {
        var context = new DeviceContext(new RecordCase(RecordFile.Read(Demo.Records[0]).OrThrow().Record), new(0, 10), OptionValues.DefaultsOf(new DoNothing().Info, new(0, 10)));
        Load(SamplePlugins.Unruly).TryGetCriterion("acme.does-nothing", out var loaded);
        var across = Nanoseconds((IDeviceCriterion)loaded!.Item, context, 20_000);
        var direct = Nanoseconds(new DoNothing(), context, 2_000_000);
        Console.WriteLine(FormattableString.Invariant($"a call that does nothing: {across / 1000:0.00} us in a plugin file, {direct / 1000:0.000} us direct (medians of {Rounds})"));
    }

    static void Starting(string tool)
    {
        var folder = Directory.CreateTempSubdirectory("fixscore-plugins-");
        var ten = Enumerable.Range(0, 10).SelectMany(i => (string[])["--plugin", SamplePlugins.Copy(SamplePlugins.Marks, Path.Combine(folder.FullName, $"{i}"))]).ToArray();
        var (without, one, all) = (Median(() => Start(tool, [])), Median(() => Start(tool, ten[..2])), Median(() => Start(tool, ten)));
        Console.WriteLine(FormattableString.Invariant($"'criteria --json' as a process: {without:0} ms, with one plugin file {one:0} ms, with ten {all:0} ms (medians of {Rounds})"));
        folder.Delete(recursive: true);
    }

    static void Start(string tool, string[] plugins)
    {
        using var process = Process.Start(new ProcessStartInfo("dotnet", ["exec", tool, "criteria", "--json", "--trust-once", .. plugins]) { RedirectStandardOutput = true })!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0) throw new InvalidOperationException("The tool failed.");
    }

    static Catalogue Load(string file) => new CatalogueBuilder().AddFile(new(file), Trusting).Build();

    static double Nanoseconds(IDeviceCriterion criterion, DeviceContext context, int calls) =>
        Median(() => { for (var i = 0; i < calls; i++) criterion.Judge(context); }) * 1e6 / calls;

    static double Median(Action run)
    {
        run();
        return Enumerable.Range(0, Rounds).Select(_ => Milliseconds(run)).Order().ElementAt(Rounds / 2);
    }

    static double Median<T>(Func<T> run) => Median(() => { run(); });

    static double Milliseconds<T>(Func<T> run) => Milliseconds(() => { run(); });

    static double Milliseconds(Action run)
    {
        var watch = Stopwatch.StartNew();
        run();
        return watch.Elapsed.TotalMilliseconds;
    }

    sealed class DoNothingPlugin : IPlugin
    {
        public void Register(IPluginRegistry registry) => registry.Add(new DoNothing());
    }

    sealed class DoNothing : IDeviceCriterion
    {
        public CriterionInfo Info { get; } = new("do-nothing", 1, "Do nothing", "nothing", "1", Direction.MoreIsBetter, "a measurement", [], []);

        public Outcome Judge(DeviceContext context) => Outcome.Scored(context.Scale.Max);
    }
}
