using System.Collections.Immutable;
using CsCheck;
using FixScore.Analysis.Assessors;

namespace FixScore.Analysis.Tests.Assessors;

/// <summary>P. E. Shrout and J. L. Fleiss (1979): six targets, four judges. Coefficients to two digits, limits of ICC(2,1) .019 and .761; more digits recomputed.</summary>
public sealed class IntraclassTests
{
    static readonly IntraclassCorrelation Published = IntraclassCorrelation.Of([[9, 2, 5, 8], [6, 1, 3, 2], [8, 4, 6, 8], [7, 1, 2, 6], [10, 5, 6, 9], [6, 2, 4, 7]]);

    [Fact]
    public void Mean_squares()
    {
        Support.Near(11.241667, Published.BetweenTargets, 5e-7);
        Support.Near(6.263889, Published.WithinTargets, 5e-7);
        Support.Near(32.486111, Published.BetweenJudges, 5e-7);
        Support.Near(1.019444, Published.Residual, 5e-7);
    }

    [Fact]
    public void Coefficients_of_one_rating_and_of_the_mean_of_four()
    {
        Support.Near(0.165742, Published.OneWay?.Value, 5e-7);
        Support.Near(0.289764, Published.TwoWayRandom?.Value, 5e-7);
        Support.Near(0.714841, Published.TwoWayMixed?.Value, 5e-7);
        Support.Near(0.442797, Published.OneWayMean?.Value, 5e-7);
        Support.Near(0.620051, Published.TwoWayRandomMean?.Value, 5e-7);
        Support.Near(0.909316, Published.TwoWayMixedMean?.Value, 5e-7);
    }

    [Fact]
    public void Limits_of_95_percent()
    {
        Limits(-0.132932, 0.722560, Published.OneWay);
        Limits(0.018787, 0.761084, Published.TwoWayRandom);
        Limits(0.342465, 0.945858, Published.TwoWayMixed);
    }

    [Fact]
    public void Judges_who_agree_in_everything_or_but_for_a_constant()
    {
        var alike = IntraclassCorrelation.Of([[1, 1], [2, 2], [4, 4]]);
        Assert.Equal((new(1, 1, 1), new(1, 1, 1)), (alike.OneWay!.Value, alike.TwoWayRandom!.Value));
        var shifted = IntraclassCorrelation.Of([[1, 3], [2, 4], [4, 6]]);
        Assert.Equal(new IccEstimate(1, 1, 1), shifted.TwoWayMixed);
        Assert.True(shifted.TwoWayRandom!.Value.Value < 1);
    }

    [Fact]
    public void Equal_ratings_say_nothing_and_too_few_are_refused()
    {
        Assert.Null(IntraclassCorrelation.Of([[3, 3], [3, 3]]).TwoWayRandom);
        Assert.Null(IntraclassCorrelation.Of([[3, 3], [3, 3]]).OneWayMean);
        Assert.Throws<ArgumentException>(() => IntraclassCorrelation.Of([[3, 3]]));
        Assert.Throws<ArgumentException>(() => IntraclassCorrelation.Of([[3, 3], [3]]));
    }

    [Fact]
    public void A_coefficient_lies_within_its_limits_and_below_one() =>
        Gen.Int[0, 20].Select(value => (decimal)value).Array[3].Array[4].Sample(rows =>
        {
            var icc = IntraclassCorrelation.Of([.. rows.Select(row => row.ToImmutableArray())]);
            foreach (var estimate in new[] { icc.OneWay, icc.TwoWayMixed }.OfType<IccEstimate>())
            {
                Assert.InRange(estimate.Value, estimate.Low, estimate.High);
                Assert.True(estimate.High <= 1);
            }
        });

    static void Limits(double low, double high, IccEstimate? estimate)
    {
        Support.Near(low, estimate?.Low, 2e-6);
        Support.Near(high, estimate?.High, 2e-6);
    }
}
