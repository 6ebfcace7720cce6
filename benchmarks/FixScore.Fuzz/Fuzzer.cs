using System.Diagnostics;
using FixScore.Fuzz.Findings;
using FixScore.Fuzz.Mutation;
using FixScore.Fuzz.Targets;

namespace FixScore.Fuzz;

/// <summary>Tries changed inputs on one target. Clocks are looked at to find slow runs and to report, never to decide what comes next.</summary>
sealed class Fuzzer(Target target, FuzzArguments asked)
{
    const long Slowest = 1000;
    const long MostMemory = 512L << 20;
    const int Reports = 20;

    readonly Chance chance = new(asked.Seed);
    readonly Corpus corpus = new(target.Seeds);
    readonly Keeper keeper = new(asked.Keep, target.Name);
    readonly Traces traces = new();

    /// <summary>Whether nothing failed.</summary>
    public bool Run()
    {
        using var watch = new Watch(asked.Keep, target.Name);
        foreach (var seed in target.Seeds) Attempt(seed, 0, watch);
        var began = Stopwatch.StartNew();
        for (long i = 1; i <= asked.Inputs; i++)
        {
            var input = Mutator.Changed(corpus.Pick(chance), corpus.Pick(chance), chance);
            Attempt(input, chance.Below(1 << 20), watch);
            if (i % Math.Max(1, asked.Inputs / Reports) == 0) Report(i, began.Elapsed, watch.Peak);
        }
        foreach (var (key, times) in keeper.Times) Console.WriteLine($"{target.Name} {times} x {key}");
        return keeper.Times.Count == 0 && watch.Peak < MostMemory;
    }

    void Attempt(byte[] input, int share, Watch watch)
    {
        watch.AtHand(input);
        if (Failing(input, share) is { } failure) keeper.Keep(input, failure, smaller =>
        {
            watch.AtHand(smaller);
            return Failing(smaller, share);
        });
        else corpus.Learn(input, traces);
    }

    // In processor time, the least of three: a machine with other work is slow at times. What never ends is the watch's to see.
    Failure? Failing(byte[] input, int share)
    {
        var fastest = long.MaxValue;
        for (var tries = 0; tries < 3 && fastest > Slowest; tries++)
        {
            var began = Environment.CpuUsage.TotalTime;
            if (Thrown(input, share) is { } failure) return failure;
            fastest = Math.Min(fastest, (long)(Environment.CpuUsage.TotalTime - began).TotalMilliseconds);
        }
        return fastest > Slowest ? Failure.Slow(fastest) : null;
    }

    Failure? Thrown(byte[] input, int share)
    {
        traces.Clear();
        try
        {
            target.Try(input, share, traces);
            return null;
        }
        catch (Exception thrown)
        {
            return Failure.Of(thrown);
        }
    }

    void Report(long inputs, TimeSpan took, long peak) => Console.WriteLine(FormattableString.Invariant(
        $"{target.Name} {inputs} inputs, {inputs / took.TotalSeconds:0} a second, {corpus.Count} in the corpus, {corpus.Traces} traces, {keeper.Times.Count} ways to fail, peak {peak >> 20} MB"));
}
