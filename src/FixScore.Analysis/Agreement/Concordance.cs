using System.Collections.Immutable;
using FixScore.Analysis.Ranking;
using MathNet.Numerics;

namespace FixScore.Analysis.Agreement;

/// <summary>How far several rankings of the same units agree: Kendall's coefficient of concordance, corrected for ties.</summary>
/// <remarks>
/// M. G. Kendall and B. Babington Smith, 1939; S. Siegel, Nonparametric Statistics, 1956: W = 12 S / (m² (n³ - n) - m T).
/// Sums are exact. The library of statistics has no W, only the distribution for its test. Immutable and thread safe.
/// </remarks>
/// <param name="Rankings">How many rankings there are, m.</param>
/// <param name="RankSums">Sum of middles of ranks of each unit; less is better.</param>
/// <param name="SquaredDeviations">S: sum of squared deviations of the rank sums from their mean.</param>
/// <param name="TieSum">T: sum of t³ - t over all groups of t level units.</param>
public sealed record Concordance(int Rankings, ImmutableArray<decimal> RankSums, decimal SquaredDeviations, decimal TieSum)
{
    /// <summary>Compares rankings.</summary>
    /// <param name="rankings">For each ranking a score of each unit; more is better in all or in none.</param>
    /// <exception cref="ArgumentException">There is none, or they differ in length.</exception>
    public static Concordance Of(ImmutableArray<ImmutableArray<decimal>> rankings)
    {
        if (rankings.IsEmpty || rankings.Any(each => each.Length != rankings[0].Length)) throw new ArgumentException("All must rank the same units.", nameof(rankings));
        var ranks = rankings.Select(ranking => Ranks.Middles(ranking)).ToArray();
        ImmutableArray<decimal> sums = [.. rankings[0].Select((_, unit) => ranks.Sum(ranking => ranking[unit]))];
        var mean = rankings.Length * (sums.Length + 1) / 2m;
        return new(rankings.Length, sums, sums.Sum(sum => (sum - mean) * (sum - mean)), rankings.Sum(Ties));
    }

    /// <summary>From 0, no agreement, to 1, all alike; <c>null</c> where all units are level in all rankings.</summary>
    public double? W => Most == 0m ? null : (double)(12m * SquaredDeviations / Most);

    /// <summary>Statistic of the test against chance, m (n - 1) W.</summary>
    public double? ChiSquare => W is { } w ? Rankings * (double)DegreesOfFreedom * w : null;

    /// <summary>Degrees of freedom of the test, n - 1.</summary>
    public int DegreesOfFreedom => RankSums.Length - 1;

    /// <summary>Chance of so much agreement or more among unrelated rankings; an approximation that is rough below 8 units.</summary>
    public double? P => ChiSquare is { } square ? SpecialFunctions.GammaUpperRegularized(DegreesOfFreedom / 2.0, square / 2) : null;

    decimal Most => Rankings * (Rankings * Cubic(RankSums.Length) - TieSum);

    static decimal Ties(ImmutableArray<decimal> ranking) => ranking.GroupBy(score => score).Sum(level => Cubic(level.Count()));

    static decimal Cubic(decimal count) => count * count * count - count;
}
