using FixScore.Numbers;

namespace FixScore.Exact.Tests.Numbers;

/// <summary>Means that others have published.</summary>
public sealed class PublishedMeansTests
{
    // OECD/JRC, Handbook on Constructing Composite Indicators (2008), section 6.11: profiles that tie arithmetically.
    // It prints 6.23, cut off after two places; six places from 21^(1/4), 42^(1/4) and (6^3 * 7)^(1/4) in Python's decimal module.
    [Theory]
    [InlineData(21, 1, 1, 1, "6", "2.140695")]
    [InlineData(6, 6, 6, 6, "6", "6")]
    [InlineData(21, 2, 1, 1, "6.25", "2.54573")]
    [InlineData(6, 7, 6, 6, "6.25", "6.235739")]
    public void A_geometric_mean_compensates_less_than_an_arithmetic_one(int a, int b, int c, int d, string arithmetic, string geometric)
    {
        (decimal, decimal)[] scores = [(1, a), (1, b), (1, c), (1, d)];
        Assert.Equal(arithmetic, PlainText.Of(Means.WeightedArithmetic(scores)));
        Assert.Equal(geometric, PlainText.Of(Rounding.To(Means.WeightedGeometric(scores), 6, RoundingMode.HalfEven)));
    }

    // Human Development Index 2014: indices of health, education and income from the table of the Human Development
    // Report 2015 and UNDP's goalposts, six digits; then the index worked out from the unrounded indices, six digits, and
    // as published, three digits. The report's printed inputs are rounded: up to 0.0011 off.
    [Theory]
    [InlineData("0.947692", "0.906111", "0.978365", "0.943590", "0.944")]
    [InlineData("0.960000", "0.933333", "0.913351", "0.935367", "0.935")]
    [InlineData("0.969231", "0.865556", "0.957029", "0.929428", "0.930")]
    [InlineData("0.969231", "0.781111", "1.000000", "0.911409", "0.912")]
    [InlineData("0.976923", "0.808333", "0.892970", "0.890080", "0.891")]
    [InlineData("0.895385", "0.686667", "1.000000", "0.850325", "0.850")]
    [InlineData("0.913846", "0.666111", "0.739993", "0.766565", "0.766")]
    [InlineData("0.858462", "0.613889", "0.729911", "0.727266", "0.727")]
    [InlineData("0.738462", "0.505000", "0.605248", "0.608860", "0.609")]
    [InlineData("0.640000", "0.515556", "0.501285", "0.548925", "0.548")]
    [InlineData("0.636923", "0.200000", "0.333240", "0.348839", "0.348")]
    public void The_human_development_index_is_a_cube_root(string health, string education, string income, string index, string published)
    {
        var actual = Means.WeightedGeometric((1, Of(health)), (1, Of(education)), (1, Of(income)));
        Assert.InRange(actual - Of(index), -0.000001m, 0.000001m);
        Assert.InRange(actual - Of(published), -0.0011m, 0.0011m);
    }

    // Triantaphyllou, Multi-Criteria Decision Making Methods: A Comparative Study (2000), the example of weighted sum and
    // weighted product. Published ratios 1.007, 1.067, 1.059 (from memory); further digits recomputed.
    [Fact]
    public void Weighted_sum_and_weighted_product_disagree_on_the_winner()
    {
        (decimal, decimal)[] first = [(0.20m, 25), (0.15m, 20), (0.40m, 15), (0.25m, 30)];
        (decimal, decimal)[] second = [(0.20m, 10), (0.15m, 30), (0.40m, 20), (0.25m, 30)];
        (decimal, decimal)[] third = [(0.20m, 30), (0.15m, 10), (0.40m, 30), (0.25m, 10)];
        Assert.Equal(["21.5", "22", "22"], [Sum(first), Sum(second), Sum(third)]);
        Assert.Equal(["1.007393", "1.067054", "1.059224"], [Ratio(first, second), Ratio(first, third), Ratio(second, third)]);
    }

    private static string Sum((decimal, decimal)[] scores) => PlainText.Of(Means.Sum(scores));

    private static string Ratio((decimal, decimal)[] one, (decimal, decimal)[] other)
    {
        var ratio = (Rational)Means.WeightedGeometric(one) / Means.WeightedGeometric(other);
        return PlainText.Of(Rounding.To(ratio.ToDecimal(), 6, RoundingMode.HalfEven));
    }

    private static decimal Of(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
