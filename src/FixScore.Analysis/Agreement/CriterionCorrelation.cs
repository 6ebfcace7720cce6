using System.Collections.Immutable;
using FixScore.Analysis.Ranking;

namespace FixScore.Analysis.Agreement;

/// <summary>How far two criteria say the same of the units.</summary>
/// <remarks>OECD and JRC, Handbook on Constructing Composite Indicators (2008), section 6.1: highly correlated criteria count one thing twice. Immutable and thread safe.</remarks>
/// <param name="First">Number of the one criterion.</param>
/// <param name="Second">Number of the other.</param>
/// <param name="Units">How many units have exact values on both; others are left out.</param>
/// <param name="Pearson">Product-moment correlation, -1 to 1; <c>null</c> for fewer than three units or a constant side.</param>
/// <param name="Spearman">Correlation of ranks, with ties; <c>null</c> likewise.</param>
/// <param name="IsDoubleCounting">Whether one of both reaches the threshold.</param>
public sealed record CriterionCorrelation(int First, int Second, int Units, double? Pearson, double? Spearman, bool IsDoubleCounting)
{
    /// <summary>The threshold taken unless another is given; common practice, no source.</summary>
    public const double UsualThreshold = 0.9;

    /// <summary>All pairs of criteria, by number.</summary>
    /// <param name="table">Values, such that more is better on all criteria.</param>
    /// <param name="threshold">From which correlation on a pair is taken to count one thing twice, above 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The threshold is not above 0 to 1.</exception>
    public static ImmutableArray<CriterionCorrelation> Of(UnitTable table, double threshold = UsualThreshold)
    {
        if (threshold is not (> 0 and <= 1)) throw new ArgumentOutOfRangeException(nameof(threshold), threshold, "Above 0 to 1.");
        return [.. from first in Enumerable.Range(0, table.Criteria.Length)
                   from second in Enumerable.Range(first + 1, table.Criteria.Length - first - 1)
                   select Of(table, first, second, threshold)];
    }

    static CriterionCorrelation Of(UnitTable table, int first, int second, double threshold)
    {
        var rows = table.Rows.Where(row => row[first].IsExact && row[second].IsExact).ToArray();
        if (rows.Length < 3) return new(first, second, rows.Length, null, null, false);
        ImmutableArray<decimal> one = [.. rows.Select(row => row[first].Low)], other = [.. rows.Select(row => row[second].Low)];
        var pearson = Correlating.Pearson(one, other);
        var spearman = Correlating.Pearson(Ranks.Middles(one), Ranks.Middles(other));
        return new(first, second, rows.Length, pearson, spearman, pearson >= threshold || spearman >= threshold);
    }
}
