using FixScore.Benchmarks.RouteProofs;
using FixScore.Disassembly.Tests.Generated;
using FixScore.Disassembly.Tests.Oracle;
using FixScore.Records;

namespace FixScore.Disassembly.Tests.Solver;

/// <summary>The two yardsticks against each other: a general solver and trying every sequence.</summary>
public sealed class SolverAgainstOracleTests
{
    [Theory]
    [InlineData(RouteCost.Steps, FirstTool.NoChange)]
    [InlineData(RouteCost.Steps, FirstTool.Change)]
    [InlineData(RouteCost.Operations, FirstTool.NoChange)]
    [InlineData(RouteCost.Seconds, FirstTool.NoChange)]
    public void A_general_solver_proves_what_trying_every_sequence_shows(RouteCost cost, FirstTool firstTool)
    {
        for (var seed = 100_000; seed < 100_300; seed++)
            Shrinking.FailOn(RandomRecords.Of(seed), record => FullyKnown.Is(record) ? Differences(record, cost, firstTool) : []);
    }

    static IEnumerable<string> Differences(TeardownRecord record, RouteCost cost, FirstTool firstTool)
    {
        var truth = new Truth(record);
        foreach (var part in record.Parts.Select(part => part.Id))
        {
            var expected = truth.To([part], cost, firstTool);
            if (expected.Reachability == Reachability.Unknown) continue;
            var value = expected.Reachability == Reachability.Reachable ? expected.Best!.Cost : (decimal?)null;
            var solved = RouteSolver.Solve(record, part, cost, firstTool).Value;
            if (value != solved) yield return FormattableString.Invariant($"{part}: the solver says {solved}, all sequences say {value}");
        }
    }
}
