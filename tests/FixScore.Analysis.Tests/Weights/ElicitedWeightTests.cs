using FixScore.Analysis.Weights;

namespace FixScore.Analysis.Tests.Weights;

public sealed class ElicitedWeightTests
{
    // OECD and JRC, Handbook on Constructing Composite Indicators (2008), table 20; eigenvector recomputed.
    static readonly decimal[][] Technology =
    [
        [1, 2, 3, 2, 5, 5, 1, 3], [0, 1, 2, 0.5m, 4, 4, 0.5m, 3], [0, 0, 1, 0.25m, 2, 2, 0.2m, 0.5m], [0, 0, 0, 1, 4, 4, 0.5m, 3],
        [0, 0, 0, 0, 1, 1, 0.2m, 0.5m], [0, 0, 0, 0, 0, 1, 0.2m, 0.5m], [0, 0, 0, 0, 0, 0, 1, 4], [0, 0, 0, 0, 0, 0, 0, 1],
    ];

    [Fact]
    public void Comparisons_of_eight_criteria_give_their_weights()
    {
        var weights = PairwiseWeights.Of(Technology);
        Near([0.229063, 0.134571, 0.059362, 0.176145, 0.038542, 0.038542, 0.252235, 0.071540], weights.Eigenvector);
        Near([0.229969, 0.134056, 0.058901, 0.173849, 0.039073, 0.039073, 0.254107, 0.070974], weights.RowMeans);
        Support.Near(8.211079, weights.LargestEigenvalue, 5e-7);
        Support.Near(0.030154, weights.ConsistencyIndex, 5e-7);
        Support.Near(0.0214, weights.ConsistencyRatio, 5e-5);
    }

    [Fact]
    public void Comparisons_that_agree_fully_give_both_ways_the_same()
    {
        var weights = PairwiseWeights.Of([[1, 2, 4], [0, 1, 2], [0, 0, 1]]);
        Near([4.0 / 7, 2.0 / 7, 1.0 / 7], weights.Eigenvector);
        Near([4.0 / 7, 2.0 / 7, 1.0 / 7], weights.RowMeans);
        Support.Near(0, weights.ConsistencyIndex, 1e-12);
    }

    [Fact]
    public void Comparisons_that_cannot_be_are_refused()
    {
        Assert.Throws<ArgumentException>(() => PairwiseWeights.Of([]));
        Assert.Throws<ArgumentException>(() => PairwiseWeights.Of([[1, 2]]));
        Assert.Throws<ArgumentException>(() => PairwiseWeights.Of([[1, 0], [1, 1]]));
        Support.Equal([1.0], PairwiseWeights.Of([[1]]).Eigenvector);
    }

    // Barron and Barrett, Management Science 42 (1996).
    [Fact]
    public void Ordered_criteria_have_the_weights_of_the_centre()
    {
        Support.Equal([Fraction.One], CentroidWeights.RankOrder(1));
        Support.Equal([new Fraction(3, 4), new(1, 4)], CentroidWeights.RankOrder(2));
        Support.Equal([new Fraction(11, 18), new(5, 18), new(1, 9)], CentroidWeights.RankOrder(3));
        Support.Equal([new Fraction(25, 48), new(13, 48), new(7, 48), new(1, 16)], CentroidWeights.RankOrder(4));
    }

    [Fact]
    public void Fractions_are_in_lowest_terms_and_convert_to_the_nearest_double()
    {
        Assert.Equal("-3/7", new Fraction(6, -14).ToString());
        Assert.Equal("0", default(Fraction).ToString());
        Assert.Equal(new Fraction(-1, 8), (Fraction)(-0.125m));
        Assert.Equal(1.0 / 3, new Fraction(1, 3).ToDouble());
        Assert.Equal(-2.5, new Fraction(-5, 2).ToDouble());
        Assert.Equal(0.0, default(Fraction).ToDouble());
        Assert.Throws<DivideByZeroException>(() => new Fraction(1, 0));
    }

    static void Near(double[] expected, IEnumerable<double> actual) => Assert.All(expected.Zip(actual), pair => Support.Near(pair.First, pair.Second, 5e-7));
}
