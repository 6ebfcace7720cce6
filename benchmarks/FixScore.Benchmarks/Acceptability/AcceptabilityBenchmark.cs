using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using FixScore.Analysis;
using FixScore.Analysis.Weights.Acceptability;

namespace FixScore.Benchmarks.Acceptability;

/// <summary>Seconds for the shares of places under uniform weights, ours against numpy: matrix product, argsort, bincount.</summary>
/// <remarks><c>acceptability [python] [repeats]</c>, from the root of the repository. Medians; both may use all cores. Aim: numpy over ours at least 3 at each size.</remarks>
static class AcceptabilityBenchmark
{
    static readonly (int Units, int Criteria, int Draws)[] Sizes = [(20, 6, 100_000), (200, 12, 10_000), (2_000, 12, 1_000)];

    public static void Run(string[] args)
    {
        var python = args.Length > 0 ? args[0] : "python3";
        var repeats = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 15;
        Console.WriteLine("units criteria   draws |      ours     numpy |  ratio | largest difference of first places, in standard errors | numpy");
        foreach (var (units, criteria, draws) in Sizes) Line(python, repeats, units, criteria, draws);
    }

    static void Line(string python, int repeats, int units, int criteria, int draws)
    {
        var table = Table(units, criteria);
        var (ours, shares) = Ours(table, draws, repeats);
        var numpy = Numpy.Run(python, units, criteria, draws, repeats);
        var apart = numpy is null ? 0 : Enumerable.Range(0, units).Max(unit => Apart(shares.Share(unit, 1), numpy.FirstPlaces[unit], draws));
        Console.WriteLine(numpy is null
            ? string.Create(CultureInfo.InvariantCulture, $"{units,5} {criteria,8} {draws,7} | {ours,9:0.00000} {"absent",9} |")
            : string.Create(CultureInfo.InvariantCulture, $"{units,5} {criteria,8} {draws,7} | {ours,9:0.00000} {numpy.Seconds,9:0.00000} | {numpy.Seconds / ours,6:0.0} | {apart:0.0} | {numpy.Version}"));
    }

    static (double Seconds, SimulatedAcceptability Shares) Ours(UnitTable table, int draws, int repeats)
    {
        var options = new AcceptabilityOptions(draws);
        var seconds = new double[repeats];
        var shares = SimulatedAcceptability.Of(table, WeightLaw.Uniform, options);
        // Long enough for the compiler to finish; a process that asks once pays more.
        for (var clock = Stopwatch.StartNew(); clock.Elapsed.TotalSeconds < 2;) shares = SimulatedAcceptability.Of(table, WeightLaw.Uniform, options);
        for (var i = 0; i < repeats; i++)
        {
            var began = Stopwatch.GetTimestamp();
            shares = SimulatedAcceptability.Of(table, WeightLaw.Uniform, options);
            seconds[i] = Stopwatch.GetElapsedTime(began).TotalSeconds;
        }
        return (Numpy.Median(seconds), shares);
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
            .Select(criterion => ((unit * 7919) + (criterion * 104729) + (unit * unit * 31L * (criterion + 1))) % 1000003 / 1000003m).ToImmutableArray()));

    static string Name(int number) => number.ToString(CultureInfo.InvariantCulture);
}
