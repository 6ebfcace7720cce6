using FixScore.Records;
using FixScore.Testing;

namespace FixScore.Scoring.Tests;

public sealed class AggregateTests
{
    static ScoreDocument Score(string aggregate, decimal a, decimal b) => Make.Record().Observe("t.a", (Quantity)a).Observe("t.b", (Quantity)b)
        .Score(Make.Profile(Make.Group(aggregate, Make.Leaf("a", "1", "t.a"), Make.Leaf("b", "3", "t.b"))));

    // Arithmetic by hand: (1 x 20 + 3 x 60) / 4.
    [Fact]
    public void Weighted_arithmetic() => Assert.Equal((Interval)50, Score("weighted-arithmetic", 20, 60).Total);

    // Square roots by hand: (16^1 x 81^3)^(1/4) = 2 x 27 = 54.
    [Fact]
    public void Weighted_geometric() => Assert.Equal((Interval)54, Score("weighted-geometric", 16, 81).Total);

    // By hand: 4 / (1/20 + 3/60) = 40.
    [Fact]
    public void Weighted_harmonic() => Assert.Equal((Interval)40, Score("weighted-harmonic", 20, 60).Total);

    [Fact]
    public void A_harmonic_mean_over_a_zero_is_zero() => Assert.Equal((Interval)0, Score("weighted-harmonic", 0, 60).Total);

    [Fact]
    public void Minimum_ignores_weights() => Assert.Equal((Interval)20, Score("minimum", 20, 60).Total);

    [Fact]
    public void Sum_takes_weights_as_factors_and_lets_nodes_have_their_own_scale()
    {
        var profile = Make.Profile(Make.Group("sum",
            Make.Leaf("a", "2", "t.a", "\"scale\": { \"min\": 0, \"max\": 20 }"), Make.Leaf("b", "0.5", "t.b", "\"scale\": { \"min\": 0, \"max\": 100 }")));
        var score = Make.Record().Observe("t.a", (Quantity)15).Observe("t.b", (Quantity)80).Score(profile);
        Assert.Equal((Interval)70, score.Total);
        Assert.Equal(new Ends(30, 30), score.At("root/a").Contribution);
        Assert.Equal(2m, score.At("root/a").Share);
    }

    [Fact]
    public void Groups_nest_in_any_way()
    {
        var inner = """{ "id": "inner", "weight": 1, "aggregate": "minimum", "of": [""" + Make.Leaf("b", "1", "t.b") + "," + Make.Leaf("c", "1", "t.c") + "] }";
        var score = Make.Record().Observe("t.a", (Quantity)90).Observe("t.b", (Quantity)40).Observe("t.c", (Quantity)10)
            .Score(Make.Profile(Make.Group("weighted-geometric", Make.Leaf("a", "1", "t.a"), inner)));
        Assert.Equal((Interval)30, score.Total); // sqrt(90 x 10), by hand
        Assert.Null(score.At("root/inner/b").Contribution);
    }

    // UNDP: HDI = cube root of health x education x income; goalposts 20-85 years, 0-18 and 0-15 years of schooling.
    // Data and published HDI: Human Development Report 2015 table as redistributed by the Helsinki open data science course.
    [Theory]
    [InlineData(81.6, 17.5, 12.6, 0.978365, 0.944)] // Norway
    [InlineData(83.5, 15.3, 11.5, 0.892970, 0.891)] // Japan
    [InlineData(78.2, 13.8, 9.1, 1.000000, 0.850)] // Qatar
    [InlineData(68.0, 11.7, 5.4, 0.605248, 0.609)] // India
    [InlineData(61.4, 5.4, 1.5, 0.333240, 0.348)] // Niger
    public void The_human_development_index_comes_out_of_a_profile(decimal years, decimal expected, decimal mean, decimal income, decimal published)
    {
        string Curve(int from, int to) => $$"""
            "options": { "useCurve": true, "curve": [{ "at": {{from}}, "points": 0 }, { "at": {{to}}, "points": 1 }] }
            """;
        var education = """{ "id": "education", "weight": 1, "aggregate": "weighted-arithmetic", "of": [""" + Make.Leaf("b", "1", "t.b", Curve(0, 18)) + "," + Make.Leaf("c", "1", "t.c", Curve(0, 15)) + "] }";
        var profile = Make.Profile(Make.Group("weighted-geometric", Make.Leaf("a", "1", "t.a", Curve(20, 85)), education, Make.Leaf("d", "1", "t.d")),
            scale: """{ "min": 0, "max": 1, "decimals": 3, "rounding": "half-up" }""");
        var score = Make.Record().Observe("t.a", (Quantity)years).Observe("t.b", (Quantity)expected).Observe("t.c", (Quantity)mean).Observe("t.d", (Quantity)income).Score(profile);
        Assert.InRange(score.Total.Low, published - 0.0011m, published + 0.0011m);
        Assert.True(score.Total.IsExact);
    }

    // Triantaphyllou 2000, as printed in the article on the weighted sum model: 21.50, 22.00, 22.00 (a tie).
    [Theory]
    [InlineData(25, 20, 15, 30, 21.50)]
    [InlineData(10, 30, 20, 30, 22.00)]
    [InlineData(30, 10, 30, 10, 22.00)]
    public void The_weighted_sum_example_of_the_literature(int a, int b, int c, int d, decimal published)
    {
        var profile = Make.Profile(Make.Group("weighted-arithmetic",
            Make.Leaf("a", "0.2", "t.a"), Make.Leaf("b", "0.15", "t.b"), Make.Leaf("c", "0.4", "t.c"), Make.Leaf("d", "0.25", "t.d")));
        var score = Make.Record().Observe("t.a", (Quantity)a).Observe("t.b", (Quantity)b).Observe("t.c", (Quantity)c).Observe("t.d", (Quantity)d).Score(profile);
        Assert.Equal((Interval)published, score.Total);
    }

    [Fact]
    public void A_third_is_rounded_half_even_to_24_digits()
    {
        var score = Make.Record().Observe("t.a", (Quantity)20).Observe("t.b", (Quantity)0)
            .Score(Make.Profile(Make.Group("weighted-arithmetic", Make.Leaf("a", "1", "t.a"), Make.Leaf("b", "2", "t.b"))));
        Assert.Equal(6.66666666666666666666667m, score.Total.Low);
        Assert.Equal(6.7m, score.Shown.Low);
    }
}
