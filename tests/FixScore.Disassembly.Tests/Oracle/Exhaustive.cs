namespace FixScore.Disassembly.Tests.Oracle;

/// <summary>The best of all ways to a goal: every state is tried, none twice.</summary>
sealed class Exhaustive(StateSpace space, Exhaustive.Goal goal, Exhaustive.Rule rule)
{
    /// <summary>What to reach, and what may be done.</summary>
    /// <param name="IsReached">Whether a state is the end.</param>
    /// <param name="Damage">Parts and joints damaged by what was done so far.</param>
    /// <param name="IsAllowed">Whether an operation may be used at all.</param>
    public sealed record Goal(Func<State, bool> IsReached, Func<State, (int Parts, int Joints)> Damage, Func<int, bool> IsAllowed);

    /// <summary>What it costs to do an operation in each way it can be done, with the bench as it is left.</summary>
    public delegate (Bench After, decimal Cost)[] Rule(Bench bench, int operation);

    readonly Dictionary<(int State, Bench Bench), Best?> known = [];

    public Best? Search() => From(space.Start, new(0, false));

    Best? From(int state, Bench bench)
    {
        if (known.TryGetValue((state, bench), out var best)) return best;
        if (goal.IsReached(space[state]))
        {
            var (parts, joints) = goal.Damage(space[state]);
            best = new(parts, joints, 0, Sequence.Empty);
        }
        else
        {
            foreach (var (operation, next) in space.From(state))
                foreach (var (after, cost) in goal.IsAllowed(operation) ? rule(bench, operation) : [])
                    best = Best.Better(best, From(next, after)?.Before(operation, cost));
        }
        return known[(state, bench)] = best;
    }
}
