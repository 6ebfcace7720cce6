using FixScore.Benchmarks.RouteProofs;
using FixScore.Disassembly.Tests.Generated;
using FixScore.Records;

namespace FixScore.Disassembly.Tests.Solver;

/// <summary>The same on random records that mix everything, with 12 to 18 operations.</summary>
public sealed class MixedRecordsTests
{
    const int Records = 60;

    [Theory]
    [InlineData(RouteCost.Steps)]
    [InlineData(RouteCost.Operations)]
    [InlineData(RouteCost.Seconds)]
    public void Routes_cost_what_a_general_solver_proves_to_be_least(RouteCost cost)
    {
        foreach (var record in Mixed().Take(Records)) Shrinking.FailOn(record, each => Differences(each, cost));
    }

    static IEnumerable<TeardownRecord> Mixed() => Enumerable.Range(0, int.MaxValue)
        .Select(seed => RandomRecords.Of(seed, mostParts: 9, mostOperations: 18))
        .Where(record => record.Operations.Count >= 12 && FullyKnown.Is(record));

    static IEnumerable<string> Differences(TeardownRecord record, RouteCost cost)
    {
        var source = new RecordCase(record);
        foreach (var part in record.Parts.Select(part => part.Id))
        {
            var route = source.RouteTo(part, cost);
            if (route.Reachability == Reachability.Unknown) continue;
            var solved = RouteSolver.Solve(record, part, cost).Value;
            if (solved != Cost(route, cost)) yield return FormattableString.Invariant($"{part}: {Cost(route, cost)}, the solver says {solved}");
        }
    }

    static decimal? Cost(Route route, RouteCost cost) => cost switch
    {
        RouteCost.Steps => route.Steps?.High,
        RouteCost.Operations => route.Operations,
        _ => (route.Seconds?.Low + route.Seconds?.High) / 2,
    };
}
