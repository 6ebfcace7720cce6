using System.Collections.Immutable;
using FixScore.Analysis.Agreement;
using FixScore.Analysis.Aggregating;
using FixScore.Analysis.Normalising;
using FixScore.Analysis.Ranking;

namespace FixScore.Analysis.Tests;

/// <summary>The Handbook's worked example, from the data to the ranks.</summary>
public sealed class TechnologyTests
{
    // Saisana, Saltelli and Tarantola (2005), J. R. Statist. Soc. A 168, Table 1: the goalposts; 2.954724790979063 = log10 901, 1.342422680822206 = log10 22, 3.843170465369047 = log10 6969.
    static readonly ImmutableArray<Normalisation> Goalposts =
    [
        Normalisation.Goalposts(0, 994), Normalisation.Goalposts(0, 272.6m), Normalisation.Goalposts(0, 232.4m), Normalisation.Goalposts(0, 80.8m),
        Normalisation.Goalposts(0, 2.954724790979063m), Normalisation.Goalposts(1.342422680822206m, 3.843170465369047m),
        Normalisation.Goalposts(0.8m, 12), Normalisation.Goalposts(0.1m, 27.4m),
    ];

    static readonly ImmutableArray<Interval> Linear =
        Aggregation.Scores(Normaliser.Apply(Technology.Table, Goalposts), Technology.EqualWeights, Aggregate.WeightedArithmetic);

    static readonly ImmutableArray<Interval> Geometric = Aggregation.Scores(Technology.Table, Technology.EqualWeights, Aggregate.WeightedGeometric);

    static readonly ImmutableArray<decimal> LinearRanks = [.. Ranks.Of(Linear).Select(rank => rank.Middle)];

    static readonly ImmutableArray<decimal> GeometricRanks = [.. Ranks.Of(Geometric).Select(rank => rank.Middle)];

    [Fact]
    public void All_23_published_ranks_of_the_linear_rule_come_out() =>
        Assert.Equal(Technology.Countries.Select(country => new Rank(country.LinearRank, country.LinearRank)), Ranks.Of(Linear));

    [Fact]
    public void All_23_published_ranks_of_the_geometric_rule_come_out() =>
        Assert.Equal(Technology.Countries.Select(country => new Rank(country.GeometricRank, country.GeometricRank)), Ranks.Of(Geometric));

    [Fact]
    public void Scores_agree_with_those_recomputed_apart() => Assert.All(Technology.Countries.Zip(Linear.Zip(Geometric)), country =>
    {
        Support.Near(country.First.Index, country.Second.First.Low, 0.00005m);
        Support.Near(country.First.Mean, country.Second.Second.Low, 0.00005m);
    });

    // Human Development Report 2001, to two decimals; the Handbook's logarithms are rounded.
    [Theory]
    [InlineData("Finland", 0.74)]
    [InlineData("United States", 0.73)]
    [InlineData("Sweden", 0.70)]
    [InlineData("Japan", 0.70)]
    [InlineData("Korea", 0.67)]
    [InlineData("Netherlands", 0.63)]
    [InlineData("United Kingdom", 0.61)]
    [InlineData("Canada", 0.59)]
    [InlineData("Germany", 0.58)]
    [InlineData("New Zealand", 0.55)]
    public void The_published_index_comes_out(string country, double index) =>
        Support.Near((decimal)index, Linear[Technology.Number(country)].Low, 0.006m);

    [Fact]
    public void With_their_own_extremes_twelve_countries_move_and_Norway_rises_to_fourth()
    {
        var own = Normaliser.Apply(Technology.Table, Normalisation.OwnExtremes(Direction.MoreIsBetter));
        var ranks = Ranks.Of(Aggregation.Scores(own, Technology.EqualWeights, Aggregate.WeightedArithmetic));
        Assert.Equal(12, Technology.Countries.Zip(ranks).Count(each => each.First.LinearRank != each.Second.Best));
        Assert.Equal(new Rank(4, 4), ranks[Technology.Number("Norway")]);
    }

    [Fact]
    public void Both_rules_agree_as_far_as_recomputed_apart()
    {
        var agreement = RankAgreement.Of(LinearRanks, GeometricRanks);
        Support.Near(0.792490, agreement.Spearman, 5e-7);
        Support.Near(0.636364, agreement.TauB, 5e-7);
        var shift = RankShift.Between(LinearRanks, GeometricRanks);
        Support.Near(70m / 23, shift.Mean, 1e-20m);
        Assert.Equal(11m, shift.Largest);
        Support.Equal([Technology.Number("Korea")], shift.Movers);
    }

    [Fact]
    public void Published_ranks_without_compensation_hold_ties_and_agree_with_the_linear_ones()
    {
        var ranks = Ranks.Middles(Technology.Countries.Select(country => (decimal)-country.NonCompensatoryRank));
        var agreement = RankAgreement.Of(LinearRanks, ranks);
        Support.Near(0.936233, agreement.Spearman, 5e-7);
        Support.Near(0.789689, agreement.TauB, 5e-7);
    }
}
