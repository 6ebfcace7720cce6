using System.Collections.Immutable;
using CsCheck;
using FixScore.Analysis.Agreement;

namespace FixScore.Analysis.Tests.Agreement;

public sealed class ConcordanceTests
{
    // S. Siegel, Nonparametric Statistics (1956), three executives and six applicants, from memory: W = .16.
    [Fact]
    public void Three_executives_hardly_agree()
    {
        var concordance = Of([1, 6, 3, 2, 5, 4], [1, 5, 6, 4, 2, 3], [6, 3, 2, 5, 4, 1]);
        Support.Equal([8m, 14, 11, 11, 11, 8], concordance.RankSums);
        Assert.Equal((25.5m, 0m, 5), (concordance.SquaredDeviations, concordance.TieSum, concordance.DegreesOfFreedom));
        Support.Near(0.161905, concordance.W, 5e-7);
        Support.Near(2.428571, concordance.ChiSquare, 5e-7);
        Support.Near(0.787212, concordance.P, 5e-7);
    }

    // M. G. Kendall, Rank Correlation Methods, three tied rankings, from memory: W = 0.828.
    [Fact]
    public void Ties_are_corrected_for()
    {
        var concordance = Of(
            [1, 4.5m, 2, 4.5m, 3, 7.5m, 6, 9, 7.5m, 10],
            [2.5m, 1, 2.5m, 4.5m, 4.5m, 8, 9, 6.5m, 10, 6.5m],
            [2, 1, 4.5m, 4.5m, 4.5m, 4.5m, 8, 8, 8, 10]);
        Assert.Equal((591m, 114m), (concordance.SquaredDeviations, concordance.TieSum));
        Support.Near(0.827731, concordance.W, 5e-7);
        Support.Near(22.348739, concordance.ChiSquare, 5e-7);
        Support.Near(0.007837, concordance.P, 5e-7);
    }

    // Kendall's identity for rankings without ties: mean Spearman = (m W - 1) / (m - 1).
    [Fact]
    public void Without_ties_it_follows_from_the_mean_of_Spearmans_coefficients() => Gen.Shuffle(Enumerable.Range(1, 6).Select(rank => (decimal)rank).ToArray()).Array[3].Sample(rankings =>
    {
        double Rho(int one, int other) => RankAgreement.Of([.. rankings[one]], [.. rankings[other]]).Spearman!.Value;
        var w = Of([.. rankings.Select(ranking => ranking.ToImmutableArray())]).W!.Value;
        Support.Near((3 * w - 1) / 2, (Rho(0, 1) + Rho(0, 2) + Rho(1, 2)) / 3, 1e-12);
        Assert.InRange(w, 0, 1);
    });

    [Fact]
    public void All_alike_is_one_and_all_level_is_nothing()
    {
        Assert.Equal(1, Of([1, 2, 2], [1, 2, 2]).W);
        Assert.Null(Of([1, 1, 1], [1, 1, 1]).P);
        Assert.Throws<ArgumentException>(() => Of([1, 2], [1]));
    }

    // Sources count the first as 1; scores count more as better.
    static ImmutableArray<decimal> Turned(ImmutableArray<decimal> ranking) => [.. ranking.Select(rank => -rank)];

    static Concordance Of(params ImmutableArray<decimal>[] rankings) => Concordance.Of([.. rankings.Select(Turned)]);
}
