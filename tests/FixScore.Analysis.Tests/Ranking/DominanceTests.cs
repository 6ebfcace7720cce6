using System.Collections.Immutable;
using CsCheck;
using FixScore.Analysis.Aggregating;
using FixScore.Analysis.Ranking;

namespace FixScore.Analysis.Tests.Ranking;

/// <summary>What holds under any weights. The small table is compared by hand, no source.</summary>
public sealed class DominanceTests
{
    static readonly Dominance Small = Dominance.Of(Support.Table([3, 2, 5], [3, 4, 1], [2, 4, 4], [2, 2, 4], [3, 2, 1]));

    [Fact]
    public void Pairs_of_the_small_table() =>
        Support.Equal([new DominancePair(0, 3), new(0, 4), new(1, 4), new(2, 3)], Small.Pairs);

    [Fact]
    public void Layers_of_the_small_table()
    {
        Support.Equal([0, 1, 2], Small.Efficient);
        Assert.Equal([[0, 1, 2], [3, 4]], Small.Layers.Select(layer => layer.ToArray()));
        Support.Equal(Small.Pairs, Small.Possible);
    }

    [Fact]
    public void Units_that_are_alike_are_not_above_each_other()
    {
        var alike = Dominance.Of(Support.Table([1, 2], [1, 2]));
        Assert.Empty(alike.Possible);
        Support.Equal([0, 1], alike.Efficient);
    }

    [Fact]
    public void An_open_value_makes_a_pair_possible_that_is_not_certain()
    {
        var open = Dominance.Of(Support.Open([new Interval(2, 5), 4m], [new Interval(3, 3), 4m], [1m, 4m]));
        Support.Equal([new DominancePair(0, 2), new(1, 2)], open.Pairs);
        Support.Equal([new DominancePair(0, 1), new(0, 2), new(1, 0), new(1, 2)], open.Possible);
        Support.Equal([0, 1], open.Efficient);
    }

    [Fact]
    public void Touching_ends_leave_it_open_whether_one_is_better() =>
        Assert.Empty(Dominance.Of(Support.Open([new Interval(3, 4)], [new Interval(2, 3)])).Pairs);

    [Fact]
    public void Whoever_is_above_for_certain_is_never_below_whatever_the_weights() =>
        Gen.Select(Gen.Int[1, 9].Select(value => (decimal)value).Array[3].Array[2, 6], Gen.Int[1, 9].Select(value => (decimal)value).Array[3]).Sample((rows, weights) =>
        {
            var table = Support.Table([.. rows.Select(row => row.ToImmutableArray())]);
            foreach (var rule in (Aggregate[])[Aggregate.WeightedArithmetic, Aggregate.WeightedGeometric, Aggregate.WeightedHarmonic, Aggregate.Minimum])
            {
                var scores = Aggregation.Scores(table, [.. weights], rule);
                Assert.All(Dominance.Of(table).Pairs, pair => Assert.True(scores[pair.Over].Low >= scores[pair.Under].High));
            }
        });
}
