using System.Collections.Immutable;
using FixScore.Pairing.Planning;

namespace FixScore.Pairing;

/// <summary>A plan of trials that settles all candidates, each trial chosen by the outcomes before it.</summary>
/// <remarks>
/// <para>In a trial a set of candidates is foreign and every function is checked. It is flagged just when one of the set is
/// tied. Which function is flagged is not used, though it may tell more.</para>
/// <para>Where the effort suffices, the plan is the best of all plans: dynamic programming over what can be known. Beyond,
/// it is the best nested plan (a flagged set is halved until a tied candidate is found), or a naive one where that is better, with <see cref="Bound"/> beside it.
/// Effort is counted, so that the plan is the same everywhere. Immutable and thread safe.</para>
/// <para>A trial begins with the parts of the trial before still in place, save that those known to be free may stay where
/// they are. Sources: Huffman 1952; Sobel and Groll 1959; Shannon 1948; the rest is our own.</para>
/// </remarks>
public sealed class AdaptivePlan
{
    /// <summary>The effort unless another is asked for: a few seconds of work at most.</summary>
    public const int UsualEffort = 60_000;

    /// <summary>How deep <see cref="Start"/> goes; deeper branches are cut.</summary>
    public const int Depth = 6;

    readonly TieBelief belief;
    readonly Planner planner;

    AdaptivePlan(TieBelief belief, Planner planner) => (this.belief, this.planner) = (belief, planner);

    /// <summary>What the plan is least in: as asked, but rebuilds where minutes were asked for and some rebuild has no time.</summary>
    public PlanObjective Objective => planner.Objective;

    /// <summary>What it costs.</summary>
    public PlanCost Cost => planner.Cost;

    /// <summary>Whether no plan is better in <see cref="Objective"/>, proven.</summary>
    public bool IsOptimal => planner.IsOptimal;

    /// <summary>No plan is below this: in expected trials, expected minutes or trials at worst, by <see cref="Objective"/>.</summary>
    public decimal Bound => planner.Bound;

    /// <summary>Where the plan starts, with its trials down to <see cref="Depth"/>.</summary>
    public PlanBranch Start => Tree(Depth);

    /// <summary>One candidate at a time, in the order of the belief, until all is settled.</summary>
    public PlanCost OneAtATime => planner.CostOf(Planner.OneAtATime);

    /// <summary>All at once; when that is flagged, one at a time.</summary>
    public PlanCost AllAtOnce => planner.CostOf(planner.AllAtOnce);

    /// <summary>Plans.</summary>
    /// <param name="belief">What is believed.</param>
    /// <param name="objective">What the plan is to be least in.</param>
    /// <param name="costs">What rebuilds cost; <c>null</c> when not known.</param>
    /// <param name="effort">The most trials that the search may weigh.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <exception cref="ArgumentException">No set of tied candidates is possible, or a flagged set names what is no candidate.</exception>
    public static AdaptivePlan Of(
        TieBelief belief, PlanObjective objective = PlanObjective.Rebuilds, IRebuildCosts? costs = null, int effort = UsualEffort, CancellationToken cancellation = default) =>
        new(belief, new(belief, objective, costs, effort, cancellation));

    /// <summary>The plan as a tree down to some depth; the whole plan can have as many branches as there are sets of candidates.</summary>
    public PlanBranch Tree(int depth) => planner.Tree(depth);

    /// <summary>The next trial after some outcomes of this plan, clean as <c>true</c>; <c>null</c> when all is settled.</summary>
    public ImmutableArray<string>? Next(params IEnumerable<bool> outcomes) =>
        planner.Next(outcomes) is { } trial ? [.. trial.Members().Select(each => belief.Candidates[each].Id)] : null;
}
