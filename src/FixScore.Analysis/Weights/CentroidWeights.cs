using System.Collections.Immutable;

namespace FixScore.Analysis.Weights;

/// <summary>Weights when only their order is known. Exact. Stateless, so safe to use from any thread.</summary>
public static class CentroidWeights
{
    /// <summary>Rank-order centroid weights: the centre of all weights with w1 >= w2 >= ... and sum 1. Weight k is (1/k + ... + 1/n) / n.</summary>
    /// <remarks>Source: Barron and Barrett, Decision quality using ranked attribute weights, Management Science 42, 1996.</remarks>
    /// <param name="criteria">How many there are, 1 or more; the most important first.</param>
    public static ImmutableArray<Fraction> RankOrder(int criteria)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(criteria, 1);
        return [.. Enumerable.Range(1, criteria).Select(k => Enumerable.Range(k, criteria - k + 1).Select(i => new Fraction(1, i)).Sum() / criteria)];
    }
}
