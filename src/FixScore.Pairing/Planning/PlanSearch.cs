namespace FixScore.Pairing.Planning;

/// <summary>A trial to make and what is to be expected from there on.</summary>
readonly record struct Choice(ulong Trial, decimal Value);

/// <summary>Best plan among some options: dynamic programming over what is known, pruned by what is known to be possible elsewhere.</summary>
/// <remarks>Limited by counted work, never by time.</remarks>
sealed class PlanSearch(Weights weights, PlanAim aim, ITrialOptions options, bool prunes, int effort, CancellationToken cancellation)
{
    readonly Dictionary<(Knowledge Knowledge, ulong Held), Choice> solved = [];
    readonly Dictionary<(Knowledge Knowledge, ulong Held), decimal> proven = [];
    int work;

    /// <summary>The best choice if it is below a limit, else one with a value that no choice is below; <c>null</c> when the effort did not suffice.</summary>
    public Choice? Best(Knowledge knowledge, ulong held, decimal limit = decimal.MaxValue)
    {
        if (knowledge.IsSettled) return new(0, 0);
        var key = KeyOf(knowledge, held);
        if (solved.TryGetValue(key, out var known)) return known;
        if (prunes && Least(knowledge, held) is var least && least >= limit) return new(0, least);
        cancellation.ThrowIfCancellationRequested();
        return Search(knowledge, held, limit) is not { } best ? null
            : best.Trial != 0 ? solved[key] = best
            : new(0, proven[key] = best.Value);
    }

    Choice? Search(Knowledge knowledge, ulong held, decimal limit)
    {
        var best = new Choice(0, limit);
        foreach (var option in Options(knowledge, held))
        {
            if (prunes && option.Bound >= best.Value) break;
            if (ValueOf(option, best.Value) is not { } value) return null;
            if (value < best.Value) best = new(option.Trial, value);
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
        return new(trial, probability, step, prunes ? step + aim.Join(probability, Least(clean.Knowledge, clean.Held), Least(flagged.Knowledge, flagged.Held)) : 0, clean, flagged);
    }

    // An outcome is followed only as far as the whole can still be below the limit.
    decimal? ValueOf(Option option, decimal limit)
    {
        var rest = limit - option.Step;
        var limitOfClean = prunes ? aim.Share(option.Probability, rest, Least(option.Flagged.Knowledge, option.Flagged.Held)) : decimal.MaxValue;
        if (Best(option.Clean.Knowledge, option.Clean.Held, limitOfClean) is not { } clean) return null;
        if (prunes && clean.Value >= limitOfClean) return limit;
        var limitOfFlagged = prunes ? aim.Share(1 - option.Probability, rest, clean.Value) : decimal.MaxValue;
        if (Best(option.Flagged.Knowledge, option.Flagged.Held, limitOfFlagged) is not { } flagged) return null;
        return prunes && flagged.Value >= limitOfFlagged ? limit : option.Step + aim.Join(option.Probability, clean.Value, flagged.Value);
    }

    decimal Least(Knowledge knowledge, ulong held)
    {
        if (knowledge.IsSettled) return 0;
        var key = KeyOf(knowledge, held);
        return solved.TryGetValue(key, out var known) ? known.Value : Math.Max(aim.Bound(knowledge), proven.GetValueOrDefault(key));
    }

    (Knowledge Knowledge, ulong Held) KeyOf(Knowledge knowledge, ulong held) => (knowledge, aim.DependsOnHeld ? held : 0);

    sealed record Option(ulong Trial, decimal Probability, decimal Step, decimal Bound, After Clean, After Flagged);
}
