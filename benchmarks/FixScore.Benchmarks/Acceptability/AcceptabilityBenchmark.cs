using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using FixScore.Analysis;
using FixScore.Analysis.Weights.Acceptability;

namespace FixScore.Benchmarks.Acceptability;

/// <summary>Seconds for the shares of places under uniform weights, ours against numpy: matrix product, argsort, bincount.</summary>
/// <remarks><c>acceptability [python] [repeats]</c>, from the root of the repository. Both may use all cores; on a busy machine only the processors' seconds tell. Aim: numpy over ours at least 3 at each size.</remarks>
static class AcceptabilityBenchmark
{
    static readonly (int Units, int Criteria, int Draws)[] Sizes = [(20, 6, 100_000), (200, 12, 10_000), (2_000, 12, 1_000)];

    public static void Run(string[] args)
    {
        var python = args.Length > 0 ? args[0] : "python3";
        var repeats = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 15;
        Console.WriteLine("Seconds, medians, by the clock and of processors; ratios numpy over ours; largest difference of first places in standard errors.");
        Console.WriteLine("units criteria   draws | ours: clock processors | numpy: clock processors | ratio: clock processors | apart");
        foreach (var (units, criteria, draws) in Sizes) Line(python, repeats, units, criteria, draws);
    }

    static void Line(string python, int repeats, int units, int criteria, int draws)
    {
        var table = Table(units, criteria);
        var (seconds, busy, shares) = Ours(table, draws, repeats);
        Console.Write(string.Create(CultureInfo.InvariantCulture, $"{units,5} {criteria,8} {draws,7} | {seconds,11:0.0000} {busy,10:0.0000} | "));
        if (Numpy.Run(python, units, criteria, draws, repeats) is not { } numpy) Console.WriteLine("no numpy");
        else
        {
            var apart = Enumerable.Range(0, units).Max(unit => Apart(shares.Share(unit, 1), numpy.FirstPlaces[unit], draws));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{numpy.Seconds,12:0.0000} {numpy.Busy,10:0.0000} | {numpy.Seconds / seconds,12:0.0} {numpy.Busy / busy,10:0.0} | {apart,5:0.0} {numpy.Version}"));
        }
    }

    static (double Seconds, double Busy, SimulatedAcceptability Shares) Ours(UnitTable table, int draws, int repeats)
    {
        var options = new AcceptabilityOptions(draws);
        var (seconds, busy) = (new double[repeats], new double[repeats]);
        var shares = SimulatedAcceptability.Of(table, WeightLaw.Uniform, options);
        // Long enough for the compiler to finish; a process that asks once pays more.
        for (var clock = Stopwatch.StartNew(); clock.Elapsed.TotalSeconds < 2;) shares = SimulatedAcceptability.Of(table, WeightLaw.Uniform, options);
        for (var i = 0; i < repeats; i++)
        {
            var (began, before) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
            shares = SimulatedAcceptability.Of(table, WeightLaw.Uniform, options);
            (seconds[i], busy[i]) = (Stopwatch.GetElapsedTime(began).TotalSeconds, (Environment.CpuUsage.TotalTime - before).TotalSeconds);
        }
        return (Numpy.Median(seconds), Numpy.Median(busy), shares);
    }

    static double Apart(double ours, double theirs, int draws)
    {
        var mean = (ours + theirs) / 2;
        return mean is 0 or 1 ? 0 : Math.Abs(ours - theirs) / Math.Sqrt(2 * mean * (1 - mean) / draws);
    }

    // The same values as in acceptability.py.
    static UnitTable Table(int units, int criteria) => UnitTables.Of(
        [.. Enumerable.Range(0, units).Select(Name)], [.. Enumerable.Range(0, criteria).Select(Name)],
        Enumerable.Range(0, units).Select(unit => Enumerable.Range(0, criteria)
            .Select(criterion => ((((unit * 31) + 7) * ((criterion * 57) + 11) * 40503L) + (unit * unit * (criterion + 1) * 7919L)) % 1000003 / 1000003m).ToImmutableArray()));

    static string Name(int number) => number.ToString(CultureInfo.InvariantCulture);
}
