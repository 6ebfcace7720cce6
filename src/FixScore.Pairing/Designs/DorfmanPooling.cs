using System.Collections.Immutable;

namespace FixScore.Pairing.Designs;

/// <summary>Two-stage pooling: swap parts in groups of one size; where a group is flagged, swap each of its parts alone.</summary>
/// <remarks>
/// For parts that are tied independently with the same probability p, the prevalence. A part costs on average
/// c(n) = 1/n + 1 − (1 − p)ⁿ trials in groups of n ≥ 2, and 1 trial without groups. Fewer are better. Numbers are decimal and
/// exact to its 28 digits. Source: Dorfman, The detection of defective members of large populations, Ann. Math. Statist.
/// 14 (1943), 436–440 (from memory).
/// </remarks>
public static class DorfmanPooling
{
    /// <summary>The least prevalence for which a best group size is looked for.</summary>
    public const decimal LeastPrevalence = 0.000001m;

    /// <summary>
    /// The group size with the fewest trials on average, the smallest of equals; 1 when groups save nothing, which is so for
    /// every prevalence above 1 − 3^(−1/3), about 30.66 %.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The prevalence is below <see cref="LeastPrevalence"/> or above 1.</exception>
    public static int BestGroupSize(decimal prevalence)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(prevalence, LeastPrevalence);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(prevalence, 1m);
        // Some group pays just when one of three does, and one of two never beats it; from three on the cost then falls to
        // its least and rises again.
        if (CostPerPart(prevalence, 3) >= 1) return 1;
        var size = 3;
        while (CostPerPart(prevalence, size + 1) < CostPerPart(prevalence, size)) size++;
        return size;
    }

    /// <summary>Expected trials per part in groups of a size, c(n); 1 for groups of one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The prevalence is not from 0 to 1, or the size is below 1.</exception>
    public static decimal CostPerPart(decimal prevalence, int groupSize)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(prevalence, 0m);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(prevalence, 1m);
        ArgumentOutOfRangeException.ThrowIfLessThan(groupSize, 1);
        return groupSize == 1 ? 1 : 1m / groupSize + Flagged(prevalence, groupSize);
    }

    /// <summary>Expected trials for a number of parts in groups of a size, the last group taking what is left over.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The prevalence is not from 0 to 1, the size is below 1 or the number negative.</exception>
    public static decimal ExpectedTrials(int parts, decimal prevalence, int groupSize)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(parts);
        _ = CostPerPart(prevalence, groupSize);
        return parts / groupSize * OfGroup(groupSize) + OfGroup(parts % groupSize);

        decimal OfGroup(int size) => size < 2 ? size : 1 + size * Flagged(prevalence, size);
    }

    /// <summary>The first stage: the parts in groups of a size, in the order given.</summary>
    /// <exception cref="ArgumentException">A part is named twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The size is below 1.</exception>
    public static SwapDesign FirstStage(IEnumerable<string> parts, int groupSize)
    {
        var ids = SwapDesign.Checked(parts);
        return new(ids, [.. ids.Chunk(groupSize).Select(group => group.ToImmutableArray())]);
    }

    static decimal Flagged(decimal prevalence, int size)
    {
        var none = 1m;
        for (var i = 0; i < size; i++) none *= 1 - prevalence;
        return 1 - none;
    }
}
