using System.Collections.Immutable;

namespace FixScore.Pairing.Planning;

/// <summary>Writes a policy as a tree of trials, down to some depth.</summary>
sealed class PlanTree(TieBelief belief, Weights weights, Policy policy, PolicyCost costs)
{
    public PlanBranch Of(After after, int depth) => new(
        Ids(after.Tied), Ids(after.Cleared), after.Knowledge.Open.Size(), [.. after.Knowledge.Flags.Select(Ids)],
        costs.Of(after.Knowledge, after.Held).Trials,
        after.Knowledge.IsSettled || depth == 0 ? null : Trial(after, depth));

    PlannedTrial Trial(After after, int depth)
    {
        var trial = policy(after.Knowledge, after.Held);
        return new(
            Ids(trial), weights.Clean(after.Knowledge, trial),
            Of(After.Clean(after.Knowledge, trial), depth - 1), Of(After.Flagged(after.Knowledge, trial), depth - 1));
    }

    ImmutableArray<string> Ids(ulong set) => [.. set.Members().Select(each => belief.Candidates[each].Id)];
}
