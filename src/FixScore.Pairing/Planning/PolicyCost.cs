namespace FixScore.Pairing.Planning;

/// <summary>Which trial to make when so much is known and so much is foreign.</summary>
delegate ulong Policy(Knowledge knowledge, ulong held);

/// <summary>What a policy costs, from the outcomes it can meet.</summary>
sealed class PolicyCost(Weights weights, Moves? moves, Policy policy)
{
    readonly Dictionary<(Knowledge Knowledge, ulong Held), PlanCost> known = [];

    public PlanCost Of(Knowledge knowledge, ulong held)
    {
        if (knowledge.IsSettled) return new(0, 0, moves is null ? null : 0);
        var key = (knowledge, moves is null ? 0 : held);
        return known.TryGetValue(key, out var cost) ? cost : known[key] = Of(knowledge, held, policy(knowledge, held));
    }

    PlanCost Of(Knowledge knowledge, ulong held, ulong trial)
    {
        var probability = weights.Clean(knowledge, trial);
        var (cleanAfter, flaggedAfter) = (After.Clean(knowledge, trial), After.Flagged(knowledge, trial));
        var clean = Of(cleanAfter.Knowledge, cleanAfter.Held);
        var flagged = Of(flaggedAfter.Knowledge, flaggedAfter.Held);
        return new(
            1 + probability * clean.Trials + (1 - probability) * flagged.Trials,
            1 + Math.Max(clean.MostTrials, flagged.MostTrials),
            moves?.Seconds(held ^ trial) + probability * clean.Seconds + (1 - probability) * flagged.Seconds);
    }
}
