using System.Collections.Immutable;
using FixScore.Analysis.Agreement;
using FixScore.Analysis.Aggregating;

namespace FixScore.Analysis.Tests.Agreement;

/// <summary>Orders that turn round. Counted by hand, no source.</summary>
public sealed class ReversalTests
{
    static readonly UnitTable Table = Support.Table([10, 0, 5], [0, 8, 5], [0, 0, 0]);

    [Fact]
    public void The_criterion_that_takes_most_of_the_lead_is_the_cause()
    {
        var reversal = Assert.Single(Reversals.Between(By("first", 2, 1, 1), By("second", 1, 2, 1)));
        Assert.Equal((0, 1, true), (reversal.First, reversal.Second, reversal.IsCertain));
        // Leads: 10 x 1/2 - 8 x 1/4 = 3 before, 10 x 1/4 - 8 x 1/2 = -1.5 after; criterion 1 takes 2.5 of 4.5.
        Assert.Equal(new ReversalCause("1", 2.5m, 4.5m), reversal.Cause);
    }

    [Fact]
    public void Level_units_are_no_reversal() => Assert.Empty(Reversals.Between(By("first", 2, 1, 1), By("level", 4, 5, 1)));

    [Fact]
    public void Open_scores_turn_round_by_their_middles_but_not_for_certain()
    {
        var one = new ScoredUnits("one", [new Interval(4, 8), 5m]);
        var reversal = Assert.Single(Reversals.Between(one, new("other", [1m, 2m])));
        Assert.False(reversal.IsCertain);
        Assert.Null(reversal.Cause);
    }

    [Fact]
    public void A_criterion_that_one_side_lacks_adds_nothing_there()
    {
        var one = new ScoredUnits("one", [3m, 1m], UnitTables.Of(["A", "B"], ["x"], [[3m], [1m]]));
        var other = new ScoredUnits("other", [1m, 2m], UnitTables.Of(["A", "B"], ["y"], [[1m], [2m]]));
        Assert.Equal(new ReversalCause("x", 2m, 3m), Assert.Single(Reversals.Between(one, other)).Cause);
    }

    [Fact]
    public void Other_units_are_refused() => Assert.Throws<ArgumentException>(() => Reversals.Between(By("one", 1, 1, 1), new("other", [1m])));

    // Pearson and Spearman by hand, no source.
    [Fact]
    public void Criteria_that_say_the_same_count_twice()
    {
        var pairs = CriterionCorrelation.Of(Support.Table([1, 10, 3], [2, 20, 1], [3, 90, 2]));
        Assert.Equal([(0, 1, true), (0, 2, false), (1, 2, false)], pairs.Select(pair => (pair.First, pair.Second, pair.IsDoubleCounting)));
        Support.Near(1, pairs[0].Spearman);
        Support.Near(-0.5, pairs[1].Pearson);
    }

    [Fact]
    public void Correlation_looks_at_exact_values_alone_and_at_three_at_least()
    {
        var pair = Assert.Single(CriterionCorrelation.Of(Support.Open([1m, 2m], [2m, 3m], [new Interval(1, 5), 9m])));
        Assert.Equal((2, (double?)null, false), (pair.Units, pair.Spearman, pair.IsDoubleCounting));
        Assert.Throws<ArgumentOutOfRangeException>(() => CriterionCorrelation.Of(Table, 0));
    }

    static ScoredUnits By(string name, params ImmutableArray<decimal> weights) =>
        new(name, Aggregation.Scores(Table, weights, Aggregate.WeightedArithmetic), Aggregation.Contributions(Table, weights));
}
