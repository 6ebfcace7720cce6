using System.Collections.Immutable;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Ranking;
using FixScore.Testing;

namespace FixScore.Analysis.Tests.Comparing;

/// <summary>Profiles that are spread over parts. Counted by hand, no source.</summary>
public sealed class SpreadTests
{
    static readonly ImmutableArray<RecordDocument> Devices = [Device("slate", 90, 10, 50), Device("pane", 20, 10, 50), Device("plinth", 90, 70, 50)];

    [Fact]
    public void Contributions_of_all_criteria_and_gates_add_up_to_the_total()
    {
        var scores = ProfileScores.Of(Devices, Bench.Spread());
        var table = Contributions.Of(scores);
        Support.Equal(["t.a", "t.part", "gates"], table.Criteria);
        Assert.All(table.Rows.Zip(scores.Scores), each => Support.Near((each.Second.Total.Low + each.Second.Total.High) / 200m, each.First.Sum(part => part.Low), 1e-20m));
    }

    [Fact]
    public void Dominance_looks_at_what_is_spread_as_a_whole()
    {
        var dominance = ProfileComparison.Of(Devices, [Bench.Spread()]).Dominance;
        Support.Equal([new DominancePair(2, 0), new(2, 1)], dominance.Pairs.Where(pair => pair.Over == 2));
        Support.Equal([2], dominance.Efficient);
    }

    static RecordDocument Device(string id, decimal a, decimal cell, decimal board) => RecordDocument.Of(
        Bench.Record(id, a, null).Absent("hinge").Observe("t.part", cell, null, "cell").Observe("t.part", board, null, "board").Build());
}
