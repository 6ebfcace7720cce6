using System.Collections.Immutable;
using FixScore.Analysis.Ranking;

namespace FixScore.Analysis.Aggregating;

/// <summary>The first criterion decides; among units that are level on it the second, and so on. Stateless, so safe to use from any thread.</summary>
public static class Lexicographic
{
    /// <summary>Ranks of the units; level are those that agree on every criterion named.</summary>
    /// <param name="table">Exact values, more is better.</param>
    /// <param name="criteria">Numbers of criteria, the one that decides first; others do not count.</param>
    /// <exception cref="ArgumentException">A value is open.</exception>
    public static ImmutableArray<Rank> Ranks(UnitTable table, ImmutableArray<int> criteria)
    {
        var rows = table.ExactRows();
        return [.. rows.Select(row => Rank.Among(rows.Select(other => Compare(other, row, criteria))))];
    }

    static int Compare(decimal[] one, decimal[] other, ImmutableArray<int> criteria) =>
        criteria.Select(criterion => one[criterion].CompareTo(other[criterion])).FirstOrDefault(sign => sign != 0);
}
