namespace FixScore.Pairing.Planning;

/// <summary>A trial to make and what is to be expected from there on.</summary>
readonly record struct Choice(ulong Trial, decimal Value);

/// <summary>Best plan among some options: dynamic programming over what is known, pruned by the bound of the aim.</summary>
/// <remarks>Limited by counted work, never by time.</remarks>
sealed class PlanSearch(Weights weights, PlanAim aim, ITrialOptions options, bool prunes, int effort, CancellationToken cancellation)
{
    readonly Dictionary<(Knowledge Knowledge, ulong Held), Choice> solved = [];
    int work;

    /// <summary>The best choice; <c>null</c> when the effort did not suffice.</summary>
    public Choice? Best(Knowledge knowledge, ulong held)
    {
        if (knowledge.IsSettled) return new(0, 0);
        var key = (knowledge, aim.DependsOnHeld ? held : 0);
        if (solved.TryGetValue(key, out var known)) return known;
        cancellation.ThrowIfCancellationRequested();
        return Search(knowledge, held) is { } best ? solved[key] = best : null;
    }

    Choice? Search(Knowledge knowledge, ulong held)
    {
        Choice? best = null;
        foreach (var option in Options(knowledge, held))
        {
            if (work > effort) return null;
            if (best is { } found && prunes && option.Bound >= found.Value) break;
            if (ValueOf(option) is not { } value) return null;
            if (best is null || value < best.Value.Value) best = new(option.Trial, value);
        }
        return work > effort ? null : best;
    }

    IEnumerable<Option> Options(Knowledge knowledge, ulong held)
    {
        var all = options.Of(knowledge).TakeWhile(_ => work++ <= effort).Select(trial => OptionOf(knowledge, held, trial)).OfType<Option>();
        return prunes ? all.OrderBy(option => option.Bound) : all;
    }

    Option? OptionOf(Knowledge knowledge, ulong held, ulong trial)
    {
        var probability = weights.Clean(knowledge, trial);
        if (probability is <= 0 or >= 1) return null;
        var (clean, flagged) = (After.Clean(knowledge, trial), After.Flagged(knowledge, trial));
        var step = aim.Step(held, trial);
        var bound = prunes ? step + aim.Join(probability, aim.Bound(clean.Knowledge), aim.Bound(flagged.Knowledge)) : 0;
        return new(trial, probability, step, bound, clean, flagged);
    }

    decimal? ValueOf(Option option) =>
        Best(option.Clean.Knowledge, option.Clean.Held) is { } clean && Best(option.Flagged.Knowledge, option.Flagged.Held) is { } flagged
            ? option.Step + aim.Join(option.Probability, clean.Value, flagged.Value)
            : null;

    sealed record Option(ulong Trial, decimal Probability, decimal Step, decimal Bound, After Clean, After Flagged);
}
