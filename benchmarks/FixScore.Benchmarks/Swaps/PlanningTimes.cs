using System.Diagnostics;
using System.Globalization;
using FixScore.Pairing;

namespace FixScore.Benchmarks.Swaps;

/// <summary>How long planning takes by the number of open parts, and how near the bound plans are.</summary>
static class PlanningTimes
{
    const int Devices = 20;

    public static void Show()
    {
        Console.WriteLine($"Planning by rebuilds, {Devices} beliefs each, every part with a probability of its own from 0.02 to 0.5.");
        Console.WriteLine("parts   median ms    worst ms  proven  trials over bound (mean, worst)");
        foreach (var parts in (int[])[4, 5, 6, 7, 8, 9, 10, 12, 16, 24, 40]) Row(parts);
        Console.WriteLine();
    }

    static void Row(int parts)
    {
        var all = Enumerable.Range(0, Devices).Select(seed => Plan(parts, seed)).ToArray();
        double[] times = [.. all.Select(each => each.Milliseconds).Order()];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{parts,5} {times[Devices / 2],11:0.0} {times[^1],11:0.0} {all.Count(each => each.Plan.IsOptimal),4}/{Devices} {all.Average(each => Gap(each.Plan)),9:0.000} {all.Max(each => Gap(each.Plan)),7:0.000}"));
    }

    static (AdaptivePlan Plan, double Milliseconds) Plan(int parts, int seed)
    {
        var random = new Random(seed);
        var belief = TieBelief.Independent(Enumerable.Range(0, parts).Select(index => ($"p{index}", random.Next(2, 51) / 100m)));
        var start = Stopwatch.GetTimestamp();
        return (AdaptivePlan.Of(belief), Stopwatch.GetElapsedTime(start).TotalMilliseconds);
    }

    static decimal Gap(AdaptivePlan plan) => plan.Cost.Trials / plan.Bound;
}
