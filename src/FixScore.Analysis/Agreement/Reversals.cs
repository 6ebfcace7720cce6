using System.Collections.Immutable;

namespace FixScore.Analysis.Agreement;

/// <summary>Finds units whose order turns round between two sets of rules, and why. Stateless, so safe to use from any thread.</summary>
public static class Reversals
{
    /// <summary>All reversals, by number of the units. Units that are level under one of the two are none.</summary>
    /// <remarks>
    /// The lead of a unit over another is a sum over criteria of what each adds to the one less what it adds to the other.
    /// The cause is the criterion by which the lead falls most; of several the first by name, ordinal. Open contributions count with their middles.
    /// </remarks>
    /// <param name="one">The units under one set of rules.</param>
    /// <param name="other">The same units under another. Criteria are matched by name; one that a set lacks adds 0 there.</param>
    /// <exception cref="ArgumentException">They differ in length.</exception>
    public static ImmutableArray<Reversal> Between(ScoredUnits one, ScoredUnits other)
    {
        if (one.Scores.Length != other.Scores.Length) throw new ArgumentException("Both must score the same units.", nameof(other));
        return [.. from first in Enumerable.Range(0, one.Scores.Length)
                   from second in Enumerable.Range(0, one.Scores.Length)
                   where IsAbove(one, first, second) && IsAbove(other, second, first)
                   select new Reversal(first, second, IsCertainlyAbove(one, first, second) && IsCertainlyAbove(other, second, first), Cause(one, other, first, second))];
    }

    static bool IsAbove(ScoredUnits units, int over, int under) => units.Scores[over].Middle() > units.Scores[under].Middle();

    static bool IsCertainlyAbove(ScoredUnits units, int over, int under) => units.Scores[over].Low > units.Scores[under].High;

    static ReversalCause? Cause(ScoredUnits one, ScoredUnits other, int first, int second)
    {
        if (one.Contributions is not { } before || other.Contributions is not { } after) return null;
        var changes = before.Criteria.Union(after.Criteria, StringComparer.Ordinal).Order(StringComparer.Ordinal)
            .Select(criterion => (criterion, Change: Lead(before, criterion, first, second) - Lead(after, criterion, first, second))).ToArray();
        var most = changes.MaxBy(change => change.Change);
        return most.Change > 0m ? new(most.criterion, most.Change, changes.Sum(change => change.Change)) : null;
    }

    static decimal Lead(UnitTable contributions, string criterion, int first, int second)
    {
        var column = contributions.Criteria.IndexOf(criterion, StringComparer.Ordinal);
        return column < 0 ? 0m : contributions[first, column].Middle() - contributions[second, column].Middle();
    }
}
