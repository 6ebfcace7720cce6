using System.Globalization;
using FixScore.Benchmarks.RouteProofs;
using FixScore.Pairing;

namespace FixScore.Benchmarks.Swaps;

/// <summary>What plans save over trying one part at a time, on generated devices with routes.</summary>
static class PlanGains
{
    const int Effort = 4_000;

    public static void Show(int devices)
    {
        Console.WriteLine($"Our plan over one part at a time, {devices} layered devices of 4 to 10 parts, 0 to 3 trials made, ties from 0.02 to 0.5; less is better.");
        Console.WriteLine("ratio of                        least  quarter   median  3/4     most    mean");
        var plans = Enumerable.Range(0, devices).AsParallel().AsOrdered().Select(PlansOf).Where(plans => plans.ByRebuilds.Cost.Trials > 0).ToArray();
        Row("expected rebuilds", plans.Select(each => each.ByRebuilds.Cost.Trials / each.ByRebuilds.OneAtATime.Trials));
        Row("minutes, by rebuilds", plans.Select(each => each.ByRebuilds.Cost.Seconds / each.ByRebuilds.OneAtATime.Seconds));
        Row("minutes, by minutes", plans.Select(each => each.ByMinutes.Cost.Seconds / each.ByMinutes.OneAtATime.Seconds));
        Row("rebuilds, all at once first", plans.Select(each => each.ByRebuilds.AllAtOnce.Trials / each.ByRebuilds.OneAtATime.Trials));
        Console.WriteLine($"Proven: {plans.Count(each => each.ByRebuilds.IsOptimal)} by rebuilds, {plans.Count(each => each.ByMinutes.IsOptimal)} by minutes, of {plans.Length} with open parts.");
    }

    static (AdaptivePlan ByRebuilds, AdaptivePlan ByMinutes) PlansOf(int seed)
    {
        var random = new Random(seed);
        var parts = random.Next(4, 11);
        var record = DeviceInstance.Of(parts, seed, DeviceShape.Layers).Record with { Swaps = GeneratedTrials.Of(parts, random.Next(4), seed).Swaps };
        var priors = Enumerable.Range(0, parts).Aggregate(TiePriors.BuiltIn, (all, index) => all.With($"part-{index}", random.Next(2, 51) / 100m));
        var (source, query) = (new RecordCase(record), new PlanQuery(Priors: priors, Effort: Effort));
        return (TrialPlan.Of(source, query).Plan!, TrialPlan.Of(source, query with { Objective = PlanObjective.Minutes }).Plan!);
    }

    static void Row(string name, IEnumerable<decimal> ratios) => Row(name, ratios.Select(ratio => (decimal?)ratio));

    static void Row(string name, IEnumerable<decimal?> ratios)
    {
        decimal[] sorted = [.. ratios.OfType<decimal>().Order()];
        decimal At(double share) => sorted[(int)(share * (sorted.Length - 1))];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{name,-30} {At(0),6:0.000} {At(0.25),8:0.000} {At(0.5),8:0.000} {At(0.75),6:0.000} {At(1),8:0.000} {sorted.Average(),7:0.000}"));
    }
}
