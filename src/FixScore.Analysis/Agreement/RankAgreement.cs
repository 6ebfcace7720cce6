using System.Collections.Immutable;
using FixScore.Analysis.Ranking;

namespace FixScore.Analysis.Agreement;

/// <summary>How far two rankings of the same units agree: 1 when alike, -1 when opposite, near 0 when unrelated.</summary>
/// <remarks>
/// <para>M. G. Kendall, Rank Correlation Methods. What orders and ties is exact decimals; only the coefficients are binary. A
/// coefficient is <c>null</c> where it is not defined: fewer than two units, or a ranking in which all are level.</para>
/// <para>Kendall's coefficients are counted here, as the library of statistics has none. Immutable and thread safe.</para>
/// </remarks>
/// <param name="Pairs">The pairs counted.</param>
/// <param name="Spearman">Product-moment correlation of the middles of ranks, which is Spearman's coefficient with ties.</param>
public sealed record RankAgreement(PairCounts Pairs, double? Spearman)
{
    /// <summary>Compares two rankings.</summary>
    /// <param name="first">A score, or a rank, for each unit.</param>
    /// <param name="second">The same units in the other ranking; more must be better in both or in neither.</param>
    /// <exception cref="ArgumentException">They differ in length.</exception>
    public static RankAgreement Of(ImmutableArray<decimal> first, ImmutableArray<decimal> second)
    {
        if (first.Length != second.Length) throw new ArgumentException("Both must rank the same units.", nameof(second));
        return new(PairCounts.Of(first, second), Correlating.Pearson(Ranks.Middles(first), Ranks.Middles(second)));
    }

    /// <summary>Kendall's tau-a: concordant less discordant pairs, over all pairs.</summary>
    public double? TauA => Share(Pairs.All);

    /// <summary>Kendall's tau-b: over the geometric mean of the pairs not tied in the one and in the other.</summary>
    public double? TauB => Share(Math.Sqrt((double)(Pairs.All - Pairs.TiedFirst) * (Pairs.All - Pairs.TiedSecond)));

    /// <summary>Goodman and Kruskal's gamma: over the pairs tied in neither.</summary>
    public double? Gamma => Share(Pairs.Concordant + Pairs.Discordant);

    /// <summary>Somers' d of the second given the first: over the pairs not tied in the first.</summary>
    public double? SomersD => Share(Pairs.All - Pairs.TiedFirst);

    double? Share(double of) => of == 0 ? null : (Pairs.Concordant - Pairs.Discordant) / of;
}
