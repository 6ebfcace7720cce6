using System.Collections.Immutable;

namespace FixScore.Pairing.Planning;

/// <summary>Searches a plan, and compares it with others under the same belief.</summary>
sealed class Planner
{
    const int MostListed = 4096;

    // A search that could not look at many states after the first would end in nothing.
    const int LeastStates = 8;

    // Each set of parts that change place asks for a route of its own.
    const int MostMoved = 8;

    // Far above what rounding leaves of a sum of probabilities.
    const decimal Rounding = 0.000000000001m;

    readonly TieBelief belief;
    readonly Weights weights;
    readonly Moves? moves;
    readonly After start;
    readonly int effort;
    readonly CancellationToken cancellation;
    readonly Policy policy;
    readonly PolicyCost costs;

    public Planner(TieBelief belief, PlanObjective objective, IRebuildCosts? rebuilds, int effort, CancellationToken cancellation)
    {
        (this.belief, this.effort, this.cancellation) = (belief, effort, cancellation);
        weights = new(belief);
        start = Beginning.Of(belief);
        moves = rebuilds is null ? null : new(belief, rebuilds);
        if (moves is not null && !AreTimed(moves)) moves = null;
        Objective = objective == PlanObjective.Minutes && moves is null ? PlanObjective.Rebuilds : objective;
        var (found, isExhaustive) = Search(Objective);
        (policy, costs, Cost) = found;
        var value = Value(Objective, Cost);
        var least = isExhaustive ? value : LeastPossible();
        IsOptimal = value - least < Rounding;
        Bound = (IsOptimal ? value : least) / (Objective == PlanObjective.Minutes ? 60 : 1);
    }

    public PlanObjective Objective { get; }

    public PlanCost Cost { get; }

    public decimal Bound { get; }

    public bool IsOptimal { get; }

    public PlanCost CostOf(Policy other) => new PolicyCost(weights, moves, other).Of(start.Knowledge, 0);

    public static ulong OneAtATime(Knowledge knowledge, ulong held) => Masks.Bit(knowledge.Open.First());

    // Once it was flagged, the flag or what is settled tells the knowledge from that of the start.
    public ulong AllAtOnce(Knowledge knowledge, ulong held) =>
        knowledge.Equals(start.Knowledge) && weights.Clean(knowledge, knowledge.Open) > 0 ? knowledge.Open : OneAtATime(knowledge, held);

    public PlanBranch Tree(int depth) => new PlanTree(belief, weights, policy, costs).Of(start, depth);

    public ulong? Next(IEnumerable<bool> outcomes)
    {
        var now = start;
        foreach (var isClean in outcomes)
        {
            var trial = policy(now.Knowledge, now.Held);
            now = isClean ? After.Clean(now.Knowledge, trial) : After.Flagged(now.Knowledge, trial);
        }
        return now.Knowledge.IsSettled ? null : policy(now.Knowledge, now.Held);
    }

    (Found Plan, bool IsExhaustive) Search(PlanObjective objective)
    {
        var aim = AimOf(objective);
        var found = Orders().Select(order => Costed(Nested(aim, objective, order))).Append(Costed(OneAtATime)).Append(Costed(AllAtOnce));
        if (objective == PlanObjective.Minutes) found = found.Append(Search(PlanObjective.Rebuilds).Plan);
        var best = found.MinBy(each => Value(objective, each.Cost))!;
        var all = new AllTrials(aim.Weights, objective != PlanObjective.Minutes);
        if (all.CountOf(start.Knowledge) * LeastStates > effort || (objective == PlanObjective.Minutes && start.Knowledge.Open.Size() > MostMoved)) return (best, false);
        var exact = new PlanSearch(aim.Weights, aim.Aim, all, prunes: true, effort, cancellation);
        return exact.Best(start.Knowledge, 0, Value(objective, best.Cost)) is not { } choice ? (best, false) : choice.Trial == 0 ? (best, true) : (Costed(exact), true);
    }

    PlanSearch Nested((PlanAim Aim, Weights Weights) aim, PlanObjective objective, int[] order)
    {
        var all = new AllTrials(aim.Weights, objective != PlanObjective.Minutes);
        return new(aim.Weights, aim.Aim, new NestedTrials(order, all), prunes: false, int.MaxValue, cancellation);
    }

    Found Costed(PlanSearch search) => Costed((knowledge, held) => search.Best(knowledge, held)!.Value.Trial);

    Found Costed(Policy found)
    {
        var cost = new PolicyCost(weights, moves, found);
        return new(found, cost, cost.Of(start.Knowledge, 0));
    }

    // The order of the record, then the least and the most probable first.
    IEnumerable<int[]> Orders()
    {
        int[] asGiven = [.. start.Knowledge.Open.Members()];
        return [asGiven, [.. asGiven.OrderBy(weights.ProbabilityOf)], [.. asGiven.OrderByDescending(weights.ProbabilityOf)]];
    }

    (PlanAim Aim, Weights Weights) AimOf(PlanObjective objective)
    {
        if (objective == PlanObjective.WorstCase && new Weights(belief.Unweighted()) is var counting) return (new FewestAtWorst(counting), counting);
        return (objective == PlanObjective.Minutes ? new LeastSeconds(weights, moves!) : new FewestRebuilds(weights), weights);
    }

    decimal LeastPossible() => Objective == PlanObjective.Rebuilds
        ? Math.Max(AimOf(Objective).Aim.Bound(start.Knowledge), weights.LeastTrials(start.Knowledge, MostListed))
        : AimOf(Objective).Aim.Bound(start.Knowledge);

    static decimal Value(PlanObjective objective, PlanCost cost) => objective switch
    {
        PlanObjective.Minutes => cost.Seconds!.Value,
        PlanObjective.WorstCase => cost.MostTrials,
        _ => cost.Trials,
    };

    bool AreTimed(Moves known) => start.Knowledge.Open.Members().All(each => known.Seconds(Masks.Bit(each)) is not null)
        && (start.Knowledge.IsSettled || known.Seconds(start.Knowledge.Open) is not null);

    sealed record Found(Policy Policy, PolicyCost Costs, PlanCost Cost);
}
