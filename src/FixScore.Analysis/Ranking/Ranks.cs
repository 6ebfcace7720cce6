using System.Collections.Immutable;

namespace FixScore.Analysis.Ranking;

/// <summary>Ranks units by scores; more is better. Exact decimals decide. Stateless, so safe to use from any thread.</summary>
public static class Ranks
{
    /// <summary>Ranks by scores that may be open: a unit is above another for certain when its low end is above the other's high end.</summary>
    /// <param name="scores">A score for each unit.</param>
    public static ImmutableArray<Rank> Of(ImmutableArray<Interval> scores) =>
        [.. scores.Select(own => new Rank(1 + scores.Count(other => other.Low > own.High), scores.Count(other => other.High >= own.Low)))];

    /// <summary>Ranks by exact scores.</summary>
    /// <param name="scores">A score for each unit.</param>
    public static ImmutableArray<Rank> OfExact(IEnumerable<decimal> scores) => Of([.. scores.Select(score => (Interval)score)]);

    /// <summary>Middles of ranks, the first place being 1: what rank statistics are made of.</summary>
    /// <param name="scores">A score for each unit.</param>
    public static ImmutableArray<decimal> Middles(IEnumerable<decimal> scores) => [.. OfExact(scores).Select(rank => rank.Middle)];
}
