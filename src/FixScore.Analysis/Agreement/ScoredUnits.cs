using System.Collections.Immutable;

namespace FixScore.Analysis.Agreement;

/// <summary>Units as one set of rules scores them.</summary>
/// <remarks>Immutable and thread safe.</remarks>
/// <param name="Name">Name of the rules.</param>
/// <param name="Scores">A score for each unit; more is better.</param>
/// <param name="Contributions">What each criterion adds to each score, on a scale that all sets of rules compared share; <c>null</c> where scores are no sums.</param>
public sealed record ScoredUnits(string Name, ImmutableArray<Interval> Scores, UnitTable? Contributions = null);

/// <summary>Two units whose order turns round between two sets of rules.</summary>
/// <param name="First">Number of the unit above under the one.</param>
/// <param name="Second">Number of the unit above under the other.</param>
/// <param name="IsCertain">Whether both orders hold whatever open values turn out to be; else they are the orders of the middles of scores.</param>
/// <param name="Cause">The criterion that turns it most; <c>null</c> where contributions are not known.</param>
public sealed record Reversal(int First, int Second, bool IsCertain, ReversalCause? Cause);

/// <summary>The criterion that turns an order most.</summary>
/// <param name="Criterion">Its name.</param>
/// <param name="Change">By how much its contribution to the lead of the first unit falls; above 0.</param>
/// <param name="Whole">By how much the lead falls as a whole.</param>
public sealed record ReversalCause(string Criterion, decimal Change, decimal Whole);
