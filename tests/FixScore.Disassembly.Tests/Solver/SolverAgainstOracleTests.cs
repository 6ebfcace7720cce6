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
        var compared = 0;
        for (var seed = 100_000; compared < 150; seed++)
        {
            var record = RandomRecords.Of(seed);
            if (!IsFullyKnown(record)) continue;
            var truth = new Truth(record);
            foreach (var part in record.Parts)
            {
                var expected = truth.To([part.Id], cost, firstTool);
                if (expected.Reachability == Reachability.Unknown) continue;
                var found = RouteSolver.Solve(record, part.Id, cost, firstTool);
                Assert.True((expected.Reachability == Reachability.Reachable ? expected.Best!.Cost : null) == found.Value, $"seed {seed} {part.Id}: {expected.Best?.Cost} {found}");
                if (found.Value > 1) compared++;
            }
        }
    }

    static bool IsFullyKnown(TeardownRecord record) =>
        record.Operations.All(operation => operation.Tools.IsRecorded && Timing.Of(operation) is { } time && time.Low % 1 == 0)
        && record.Parts.All(part => part.Reach.Is(Reach.NotTried));
}
