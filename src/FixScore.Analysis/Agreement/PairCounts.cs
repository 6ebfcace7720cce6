using System.Collections.Immutable;

namespace FixScore.Analysis.Agreement;

/// <summary>How all pairs of units stand in two rankings.</summary>
/// <param name="Concordant">Pairs in the same order in both.</param>
/// <param name="Discordant">Pairs in opposite orders.</param>
/// <param name="TiedFirst">Pairs level in the first ranking, whether or not in the second.</param>
/// <param name="TiedSecond">Pairs level in the second ranking, whether or not in the first.</param>
/// <param name="All">All pairs.</param>
public readonly record struct PairCounts(long Concordant, long Discordant, long TiedFirst, long TiedSecond, long All)
{
    internal static PairCounts Of(ImmutableArray<decimal> first, ImmutableArray<decimal> second)
    {
        var (with, against, tiedFirst, tiedSecond, all) = (0L, 0L, 0L, 0L, 0L);
        for (var i = 0; i < first.Length; i++)
            for (var j = 0; j < i; j++, all++)
            {
                var (one, other) = (first[i].CompareTo(first[j]), second[i].CompareTo(second[j]));
                if (one == 0) tiedFirst++;
                if (other == 0) tiedSecond++;
                if (one * other > 0) with++;
                if (one * other < 0) against++;
            }
        return new(with, against, tiedFirst, tiedSecond, all);
    }
}
