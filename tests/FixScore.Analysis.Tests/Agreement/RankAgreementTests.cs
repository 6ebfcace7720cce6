using System.Collections.Immutable;
using CsCheck;
using FixScore.Analysis.Agreement;
using MathNet.Numerics.Statistics;

namespace FixScore.Analysis.Tests.Agreement;

/// <summary>Published rank correlations; where a source gives only one coefficient, the others are recomputed by counting pairs.</summary>
public sealed class RankAgreementTests
{
    static readonly Gen<decimal> Values = Gen.Int[0, 5].Select(value => (decimal)value);

    static readonly Gen<(decimal[], decimal[])> Pairs = Gen.Int[2, 9].SelectMany(count => Gen.Select(Values.Array[count], Values.Array[count]));

    // Documentation of the SciPy library, kendalltau.
    [Fact]
    public void Five_values_with_ties() =>
        Check([12, 2, 1, 12, 2], [1, 4, 7, 1, 0], new(2, 6, 2, 1, 10), -0.4, -0.4714045207910317, -0.5, -0.5407380704, -0.5);

    // IQ and hours of television: a textbook example of Spearman's coefficient, from memory.
    [Fact]
    public void Ten_values_without_ties() =>
        Check([106, 100, 86, 101, 99, 103, 97, 113, 112, 110], [7, 27, 2, 50, 28, 29, 20, 12, 6, 17], new(20, 25, 0, 0, 45), -1 / 9d, -1 / 9d, -1 / 9d, -29 / 165d, -1 / 9d);

    // OECD and JRC Handbook (2008), Box 7, height and weight: 0.57. The box calls it W; it is tau.
    [Fact]
    public void Height_and_weight_of_eight() =>
        Check([1, 2, 3, 4, 5, 6, 7, 8], [3, 4, 1, 2, 5, 7, 8, 6], new(22, 6, 0, 0, 28), 4 / 7d, 4 / 7d, 4 / 7d, 0.738095238095, 4 / 7d);

    // M. G. Kendall, Rank Correlation Methods, tied rankings, from memory: tau-b 0.859.
    [Fact]
    public void Ten_values_with_many_ties() => Check(
        [1, 2.5m, 2.5m, 4.5m, 4.5m, 6.5m, 6.5m, 8, 9.5m, 9.5m], [1, 2, 4.5m, 4.5m, 4.5m, 4.5m, 8, 8, 8, 10], new(33, 0, 4, 9, 45), 33 / 45d, 0.8589556904, 1, 0.9171378686, 33 / 41d);

    [Fact]
    public void Without_an_order_there_is_no_coefficient()
    {
        var level = RankAgreement.Of([1, 1, 1], [1, 2, 3]);
        Assert.Equal(0, level.TauA);
        Assert.Null(level.TauB);
        Assert.Null(level.Gamma);
        Assert.Null(level.SomersD);
        Assert.Null(level.Spearman);
        Assert.Null(RankAgreement.Of([4], [5]).TauA);
        Assert.Throws<ArgumentException>(() => RankAgreement.Of([4], []));
    }

    // The library's own Spearman is right with ties: both ways agree.
    [Fact]
    public void Spearman_is_the_same_as_that_of_the_library() => Pairs.Sample((x, y) =>
    {
        var library = Correlation.Spearman(x.Select(value => (double)value), y.Select(value => (double)value));
        if (RankAgreement.Of([.. x], [.. y]).Spearman is { } own) Support.Near(library, own, 1e-12);
        else Assert.True(double.IsNaN(library));
    });

    [Fact]
    public void Agreement_is_bounded_alike_from_both_sides_and_turns_with_one_ranking() => Pairs.Sample((x, y) =>
    {
        var (there, back, turned) = (RankAgreement.Of([.. x], [.. y]), RankAgreement.Of([.. y], [.. x]), RankAgreement.Of([.. x], [.. y.Select(value => -value)]));
        Assert.Equal(there.TauB, back.TauB);
        Assert.Equal(there.TauB, -turned.TauB);
        if (there.TauB is { } tau) Assert.InRange(tau, -1, 1);
        if (there.Spearman is { } rho) Assert.InRange(rho, -1, 1);
        if (RankAgreement.Of([.. x], [.. x]).TauB is { } self) Assert.Equal(1, self);
    });

    [Fact]
    public void A_shift_counts_places()
    {
        var shift = RankShift.Between([1, 2, 3], [3, 1, 2]);
        Assert.Equal((4 / 3m, 2m), (shift.Mean, shift.Largest));
        Support.Equal([0], shift.Movers);
        Assert.Empty(RankShift.Between([1, 2], [1, 2]).Movers);
        Assert.Throws<ArgumentException>(() => RankShift.Between([], []));
    }

    static void Check(ImmutableArray<decimal> x, ImmutableArray<decimal> y, PairCounts pairs, double tauA, double tauB, double gamma, double spearman, double somers)
    {
        var agreement = RankAgreement.Of(x, y);
        Assert.Equal(pairs, agreement.Pairs);
        Support.Near(tauA, agreement.TauA);
        Support.Near(tauB, agreement.TauB);
        Support.Near(gamma, agreement.Gamma);
        Support.Near(spearman, agreement.Spearman);
        Support.Near(somers, agreement.SomersD);
    }
}
