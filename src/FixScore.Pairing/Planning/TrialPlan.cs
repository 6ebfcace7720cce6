using System.Collections.Immutable;
using FixScore.Pairing.Planning;
using FixScore.Records;

namespace FixScore.Pairing;

/// <summary>Why no trial can be planned.</summary>
public enum PlanObstacle
{
    /// <summary>The trials made so far cannot all be right.</summary>
    Contradiction,

    /// <summary>There are no two whole devices of the same model code.</summary>
    OneDevice,

    /// <summary>There are more candidates than a plan can hold, see <see cref="TieBelief.MostCandidates"/>.</summary>
    TooMany,

    /// <summary>More parts are tied, or flagged, than the belief allows.</summary>
    Impossible,
}

/// <summary>The next swap trials for a device: what to settle, with which units, in which order, at what cost. Immutable, thread safe.</summary>
/// <remarks>
/// <para>Candidates are all parts and groups that can carry a code, are not the main board's, are neither paired nor cleared
/// in the context, and can be taken out undamaged. They start with a guess of their own at how probable a tie is, and what
/// the trials of the context say is taken into account: clean ones strike parts out, flagged ones leave sets that hold a tied part.</para>
/// <para>Not modelled: which function is flagged; trials in which the main board changes place instead of the parts; units
/// beyond two. A flag that may be the doing of a part that cannot be taken out is left unused.</para>
/// </remarks>
public sealed class TrialPlan
{
    readonly Lazy<FixedPlan?> fixedPlan;

    TrialPlan(TeardownCase source, PlanQuery query, CancellationToken cancellation)
    {
        (Query, Context) = (query, query.Context ?? PlanContexts.Usual(source.Record));
        Priors = query.Priors ?? TiePriors.BuiltIn;
        var units = SwapUnits.Of(source, Context, Priors);
        (Candidates, Tied, Cleared, NotMovable) = (units.Open, units.Tied, units.Cleared, units.Stuck);
        (Host, Donor) = PlanUnits.Of(source.Record, Context);
        PartFunctions = [.. Candidates.SelectMany(unit => unit.Parts).Select(part => part.Role).Distinct(StringComparer.Ordinal).SelectMany(role => Pairing.PartFunctions.Of(role))];
        Functions = [.. source.Record.Swaps.SelectMany(trial => trial.Checks).Select(check => check.Function)
            .Concat(PartFunctions.Where(function => function.IsEssential).Select(function => function.Function)).Distinct(StringComparer.Ordinal)];
        HasControl = source.Record.Swaps.Any(trial => SwapContext.Of(trial) == Context && trial.Host == Host?.Id && trial.Installed.IsEmpty);
        Obstacle = ObstacleIn(source);
        var times = new BenchTimes(source, Candidates.ToDictionary(unit => unit.Id, StringComparer.Ordinal));
        if (Obstacle is null) (Plan, Obstacle) = Planned(units, times, cancellation);
        fixedPlan = new(() => Plan is null ? null : FixedPlan.Of(Belief(units).WithAtMost(query.AtMost ?? 1), times));
        AssumesReassembly = times.AssumesReassembly;
    }

    /// <summary>What was asked.</summary>
    public PlanQuery Query { get; }

    /// <summary>The context that the trials are to be made in.</summary>
    public SwapContext Context { get; }

    /// <summary>The guesses used.</summary>
    public TiePriors Priors { get; }

    /// <summary>The device that parts are put into; <c>null</c> when there is none.</summary>
    public AssessedUnit? Host { get; }

    /// <summary>The device that they come from; <c>null</c> when there is no second one of the same model code.</summary>
    public AssessedUnit? Donor { get; }

    /// <summary>What is open, in the order of the record.</summary>
    public ImmutableArray<SwapUnit> Candidates { get; }

    /// <summary>Ids of what is proven to be tied.</summary>
    public ImmutableArray<string> Tied { get; }

    /// <summary>Ids of what is proven to be free.</summary>
    public ImmutableArray<string> Cleared { get; }

    /// <summary>What is open but cannot be taken out undamaged, so that no trial settles it.</summary>
    public ImmutableArray<SwapUnit> NotMovable { get; }

    /// <summary>What the candidates do, by role, with how to check it.</summary>
    public ImmutableArray<PartFunction> PartFunctions { get; }

    /// <summary>Functions to check in every trial: those of the trials of the record, in its order, then the essential ones of the candidates; each once.</summary>
    public ImmutableArray<string> Functions { get; }

    /// <summary>Whether a trial without foreign parts was made with the host in this context.</summary>
    public bool HasControl { get; }

    /// <summary>Why there is no plan; <c>null</c> when there is one.</summary>
    public PlanObstacle? Obstacle { get; }

    /// <summary>The plan; <c>null</c> when there is an obstacle. Without candidates it has no trial.</summary>
    public AdaptivePlan? Plan { get; }

    /// <summary>Fixed trials for as many tied candidates as the query allows, else for one at most; <c>null</c> when there is an obstacle.</summary>
    /// <exception cref="ArgumentException">More candidates are flagged than that.</exception>
    public FixedPlan? Fixed => fixedPlan.Value;

    /// <summary>Whether some reassembly has no time and was taken to be as long as the way in.</summary>
    public bool AssumesReassembly { get; }

    /// <summary>Plans the next trials.</summary>
    /// <param name="source">The record.</param>
    /// <param name="query">What is asked.</param>
    /// <param name="cancellation">Stops the search.</param>
    public static TrialPlan Of(TeardownCase source, PlanQuery query, CancellationToken cancellation = default) => new(source, query, cancellation);

    PlanObstacle? ObstacleIn(TeardownCase source) =>
        source.Derive<PairingVerdicts>().Contexts.Any(each => each.Context == Context && !each.IsConsistent) ? PlanObstacle.Contradiction
        : Donor is null ? PlanObstacle.OneDevice
        : Candidates.Length > TieBelief.MostCandidates ? PlanObstacle.TooMany : null;

    (AdaptivePlan?, PlanObstacle?) Planned(SwapUnits units, IRebuildCosts times, CancellationToken cancellation)
    {
        var belief = Belief(units);
        if (Query.AtMost is { } most) belief = belief.WithAtMost(most);
        if (!Beginning.IsPossible(belief)) return (null, PlanObstacle.Impossible);
        return (AdaptivePlan.Of(belief, Query.Objective, times, Query.Effort, cancellation), null);
    }

    static TieBelief Belief(SwapUnits units) =>
        TieBelief.Independent(units.Open.Select(unit => (unit.Id, unit.Probability))) with { Flagged = units.Flagged };
}
