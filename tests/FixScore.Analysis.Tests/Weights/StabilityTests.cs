using CsCheck;
using FixScore.Analysis.Weights;

namespace FixScore.Analysis.Tests.Weights;

// No published table; recomputed by hand with fractions. Method: proportional rescaling of the other weights.
public sealed class StabilityTests
{
    static readonly UnitTable Three = Support.Table([0.8m, 0.4m, 0.3m], [0.5m, 0.7m, 0.5m], [0.2m, 0.6m, 0.9m]);

    [Fact]
    public void Each_weight_has_the_range_in_which_the_order_holds()
    {
        var stability = WeightStability.Of(Three, [0.5m, 0.3m, 0.2m]);
        var tie = new UnitPair(0, 1);
        Support.Equal(
            [new StabilityInterval(new(13, 28), 1, tie, null), new StabilityInterval(0, new(11, 32), null, tie), new StabilityInterval(0, new(3, 11), null, tie)],
            stability.Select(each => each.Order));
        Support.Equal([new Fraction(1, 2), new(3, 10), new(1, 5)], stability.Select(each => each.Share));
    }

    [Fact]
    public void Weights_need_not_sum_to_one() =>
        Support.Equal(WeightStability.Of(Three, [0.5m, 0.3m, 0.2m]), WeightStability.Of(Three, [5, 3, 2]));

    // By hand: A = x, B = 1 - x, C = 2/5. A leads B from 1/2 on; B falls behind C where x is above 3/5.
    [Fact]
    public void The_winner_may_stay_where_the_order_does_not()
    {
        var first = WeightStability.Of(Support.Table([1, 0], [0, 1], [0.4m, 0.4m]), [0.55m, 0.45m])[0];
        Assert.Equal(new StabilityInterval(new(1, 2), 1, new UnitPair(0, 1), null), first.Winner);
        Assert.Equal(new StabilityInterval(new(1, 2), new(3, 5), new UnitPair(0, 1), new UnitPair(1, 2)), first.Order);
    }

    [Fact]
    public void A_tie_that_any_change_breaks_holds_at_a_point_and_one_that_none_breaks_everywhere()
    {
        Assert.Equal((new Fraction(1, 2), new Fraction(1, 2)), Ends(WeightStability.Of(Support.Table([1, 0], [0, 1]), [1, 1])[0].Winner));
        Assert.Equal((new Fraction(0, 1), Fraction.One), Ends(WeightStability.Of(Support.Table([1, 2], [1, 2]), [1, 1])[0].Order));
    }

    [Fact]
    public void A_sole_criterion_or_unit_changes_nothing()
    {
        Assert.Equal(new StabilityInterval(1, 1, null, null), WeightStability.Of(Support.Table([1], [2]), [7])[0].Order);
        Assert.Equal(new StabilityInterval(0, 1, null, null), WeightStability.Of(Support.Table([1, 2]), [7, 0])[0].Order);
    }

    [Fact]
    public void Open_values_and_weights_that_do_not_fit_are_refused()
    {
        Assert.Throws<ArgumentException>(() => WeightStability.Of(Support.Open([new Interval(1, 2)]), [1]));
        Assert.Throws<ArgumentException>(() => WeightStability.Of(Three, [1, 1]));
        Assert.Throws<ArgumentException>(() => WeightStability.Of(Three, [0, 0, 0]));
    }

    [Fact]
    public void The_given_share_lies_in_both_ranges_and_the_winner_has_the_wider() => Samples.Tables.Sample(rows =>
    {
        foreach (var each in WeightStability.Of(Support.Table(rows), [1, 2, 5]))
        {
            Assert.True(each.Winner.Contains(each.Share) && each.Order.Contains(each.Share));
            Assert.True(each.Winner.Low <= each.Order.Low && each.Order.High <= each.Winner.High);
        }
    }, iter: 200);

    static (Fraction, Fraction) Ends(StabilityInterval range) => (range.Low, range.High);
}
