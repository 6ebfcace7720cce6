using System.Collections.Immutable;
using CsCheck;
using FixScore.Analysis.Aggregating;
using FixScore.Analysis.Ranking;

namespace FixScore.Analysis.Tests.Aggregating;

public sealed class AggregationTests
{
    static readonly Gen<ImmutableArray<decimal>[]> Rows = Gen.Int[1, 100].Select(value => (decimal)value).Array[3].Select(row => row.ToImmutableArray()).Array[2, 6];

    // OECD and JRC Handbook (2008), section 6.11: 6 and 6, 2.14 and 6; after one more point 2.54 and 6.23. More digits recomputed.
    [Fact]
    public void Full_compensation_sees_no_difference_between_a_specialist_and_an_all_rounder()
    {
        var table = Support.Table([21, 1, 1, 1], [6, 6, 6, 6], [21, 2, 1, 1], [6, 7, 6, 6]);
        Assert.Equal([6m, 6m, 6.25m, 6.25m], Exact(table, [1, 1, 1, 1], Aggregate.WeightedArithmetic));
        decimal[] expected = [2.140695m, 6, 2.545730m, 6.235739m];
        Assert.All(Exact(table, [1, 1, 1, 1], Aggregate.WeightedGeometric).Zip(expected), each => Support.Near(each.Second, each.First, 5e-7m));
    }

    // Triantaphyllou, Multi-Criteria Decision Making Methods (2000): sums 21.50, 22.00, 22.00; ratios of products 1.007, 1.067, 1.059.
    [Fact]
    public void Sum_and_product_disagree_about_the_winner()
    {
        var table = Support.Table([25, 20, 15, 30], [10, 30, 20, 30], [30, 10, 30, 10]);
        ImmutableArray<decimal> weights = [0.20m, 0.15m, 0.40m, 0.25m];
        Assert.Equal([21.5m, 22m, 22m], Exact(table, weights, Aggregate.WeightedArithmetic));
        var products = Exact(table, weights, Aggregate.WeightedGeometric);
        Support.Near(1.007m, products[0] / products[1], 0.0005m);
        Support.Near(1.067m, products[0] / products[2], 0.0005m);
        Support.Near(1.059m, products[1] / products[2], 0.0005m);
        Support.Equal([new Rank(3, 3), new Rank(1, 2), new Rank(1, 2)], Ranks.Of(Aggregation.Scores(table, weights, Aggregate.WeightedArithmetic)));
    }

    [Fact]
    public void Equal_products_of_unlike_values_are_level() =>
        Assert.Equal([6m, 6m, 6m], Exact(Support.Table([4, 9], [2, 18], [6, 6]), [1, 1], Aggregate.WeightedGeometric));

    [Fact]
    public void Harmonic_mean_and_minimum_follow_their_formulas()
    {
        Assert.Equal([2m, 0m], Exact(Support.Table([1.5m, 3], [0, 8]), [1, 1], Aggregate.WeightedHarmonic));
        Assert.Equal([1.5m, 0m], Exact(Support.Table([1.5m, 3], [0, 8]), [1, 9], Aggregate.Minimum));
        Assert.Equal([28.5m], Exact(Support.Table([1.5m, 3]), [1, 9], Aggregate.Sum));
    }

    [Fact]
    public void A_criterion_of_weight_zero_does_not_count() => Assert.Equal([4m], Exact(Support.Table([4, 0]), [1, 0], Aggregate.WeightedGeometric));

    [Fact]
    public void Weights_that_cannot_be_are_refused()
    {
        var table = Support.Table([1, 2]);
        Assert.Throws<ArgumentException>(() => Aggregation.Scores(table, [1], Aggregate.Sum));
        Assert.Throws<ArgumentException>(() => Aggregation.Scores(table, [1, -1], Aggregate.Sum));
        Assert.Throws<ArgumentException>(() => Aggregation.Scores(table, [0, 0], Aggregate.Sum));
    }

    [Fact]
    public void An_open_value_opens_the_score() =>
        Support.Equal([new Interval(2, 4)], Aggregation.Scores(Support.Open([new Interval(1, 4), 4m]), [1, 1], Aggregate.WeightedGeometric));

    [Fact]
    public void Contributions_add_up_to_the_mean() => Rows.Sample(rows =>
    {
        var table = Support.Table(rows);
        var scores = Exact(table, [1, 2, 5], Aggregate.WeightedArithmetic);
        Assert.All(Aggregation.Contributions(table, [1, 2, 5]).Rows.Zip(scores), each => Support.Near(each.Second, each.First.Sum(part => part.Low), 1e-20m));
    });

    [Fact]
    public void Means_lie_between_the_ends_keep_their_order_and_do_not_ask_who_comes_first() => Rows.Sample(rows =>
    {
        foreach (var row in rows)
        {
            var means = Means.Select(rule => Exact(Support.Table(row), [3, 1, 2], rule)[0]).ToArray();
            var turned = Means.Select(rule => Exact(Support.Table([row[2], row[0], row[1]]), [2, 3, 1], rule)[0]);
            Assert.Equal(means, turned);
            Assert.Equal(means.OrderDescending(), means);
            Assert.InRange(means[0], row.Min(), row.Max());
        }
    });

    [Fact]
    public void More_is_never_worse() => Gen.Select(Rows, Gen.Int[0, 2]).Sample((rows, criterion) =>
    {
        foreach (var rule in Means)
            Assert.True(Exact(Support.Table(rows[0].SetItem(criterion, rows[0][criterion] + 1)), [3, 1, 2], rule)[0] >= Exact(Support.Table(rows[0]), [3, 1, 2], rule)[0]);
    });

    // From the most compensation to the least.
    static readonly Aggregate[] Means = [Aggregate.WeightedArithmetic, Aggregate.WeightedGeometric, Aggregate.WeightedHarmonic, Aggregate.Minimum];

    static decimal[] Exact(UnitTable table, ImmutableArray<decimal> weights, Aggregate rule) => [.. Aggregation.Scores(table, weights, rule).Select(score => score.Low)];
}
