using System.Collections.Immutable;
using FixScore.Pairing.Planning;

namespace FixScore.Pairing;

/// <summary>Trials decided beforehand whose outcomes together name the tied candidates, provided that there are few.</summary>
/// <remarks>Useful when several units or benches work at the same time. Immutable and thread safe.</remarks>
/// <param name="Trials">The ids of the foreign candidates of each trial, in the order of the belief.</param>
/// <param name="Outcomes">What each pattern of outcomes means. A pattern that is not listed says that more candidates are tied than was assumed.</param>
/// <param name="AtMost">How many were assumed to be tied at most.</param>
/// <param name="Bound">No fixed plan has fewer trials: each trial has two outcomes.</param>
/// <param name="Seconds">Seconds at the bench, one trial after the other; <c>null</c> when some rebuild has no time.</param>
public sealed record FixedPlan(
    ImmutableArray<ImmutableArray<string>> Trials, ImmutableArray<FixedOutcome> Outcomes, int AtMost, int Bound, decimal? Seconds)
{
    /// <summary>The most sets of tied candidates that are told apart; beyond, trials are made one candidate at a time.</summary>
    public const int MostSets = 2000;

    /// <summary>Whether fewer trials cannot do, proven.</summary>
    public bool IsOptimal => Trials.Length == Bound;

    /// <summary>Plans for a belief, its limit on how many are tied included.</summary>
    /// <exception cref="ArgumentException">No set of tied candidates is possible, or a flagged set names what is no candidate.</exception>
    public static FixedPlan Of(TieBelief belief, IRebuildCosts? costs = null) => new FixedPlanner(belief, costs).Plan();
}

/// <summary>What a pattern of outcomes means.</summary>
/// <param name="Flagged">For each trial whether it was flagged.</param>
/// <param name="Tied">Ids of the candidates that are tied then; none for an empty list.</param>
public sealed record FixedOutcome(ImmutableArray<bool> Flagged, ImmutableArray<string> Tied);
