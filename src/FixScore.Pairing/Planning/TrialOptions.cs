namespace FixScore.Pairing.Planning;

/// <summary>Which trials a search looks at in some state.</summary>
interface ITrialOptions
{
    IEnumerable<ulong> Of(Knowledge knowledge);
}

/// <summary>Every trial that can come out either way. Of candidates that nothing tells apart the first ones are taken, when they cost the same.</summary>
sealed class AllTrials(Weights weights, bool areEquallyDear) : ITrialOptions
{
    public IEnumerable<ulong> Of(Knowledge knowledge)
    {
        IEnumerable<ulong> trials = [0];
        foreach (var alike in Classes(knowledge)) trials = trials.SelectMany(trial => Prefixes(alike).Select(prefix => trial | prefix));
        return trials.Where(trial => trial != 0 && !knowledge.Flags.Any(flag => flag.Within(trial)));
    }

    /// <summary>How many trials there are, those that only come out one way included.</summary>
    public decimal CountOf(Knowledge knowledge) => Classes(knowledge).Aggregate(1m, (product, alike) => product * (alike.Count + 1));

    List<List<int>> Classes(Knowledge knowledge)
    {
        var classes = new List<List<int>>();
        foreach (var each in knowledge.Open.Members())
        {
            var alike = areEquallyDear ? classes.Find(others => AreAlike(knowledge, others[0], each)) : null;
            if (alike is null) classes.Add([each]);
            else alike.Add(each);
        }
        return classes;
    }

    bool AreAlike(Knowledge knowledge, int one, int other) =>
        weights.AreAlike(one, other) && knowledge.Flags.All(flag => flag.Meets(Masks.Bit(one)) == flag.Meets(Masks.Bit(other)));

    static IEnumerable<ulong> Prefixes(List<int> alike) => Enumerable.Range(0, alike.Count + 1).Select(size => alike.Take(size).Union());
}

/// <summary>
/// Nested trials along an order: a flagged set is halved until a tied candidate is found, whatever is left of it is as
/// before; so few states arise that the best such plan is found for any number of candidates (Sobel and Groll 1959, Bell
/// System Technical Journal 38, for equal probabilities; from memory). The last few candidates get every trial.
/// </summary>
sealed class NestedTrials(int[] order, AllTrials all) : ITrialOptions
{
    const int Few = 4;

    public IEnumerable<ulong> Of(Knowledge knowledge)
    {
        if (knowledge.Open.Size() <= Few) return all.Of(knowledge);
        if (Shared(knowledge.Flags) is not 0 and var shared) return [Masks.Bit(MostBlamed(knowledge.Flags, shared))];
        if (knowledge.Flags.Length == 0) return Prefixes(knowledge.Open, knowledge.Open.Size());
        var first = knowledge.Flags.MinBy(flag => Array.FindIndex(order, each => flag.Meets(Masks.Bit(each))));
        return Prefixes(first, first.Size() - 1);
    }

    static ulong Shared(ulong[] flags)
    {
        var (seen, shared) = (0UL, 0UL);
        foreach (var flag in flags) (seen, shared) = (seen | flag, shared | (seen & flag));
        return shared;
    }

    int MostBlamed(ulong[] flags, ulong shared) =>
        order.Where(each => shared.Meets(Masks.Bit(each))).MaxBy(each => flags.Count(flag => flag.Meets(Masks.Bit(each))));

    IEnumerable<ulong> Prefixes(ulong set, int most)
    {
        var prefix = 0UL;
        foreach (var each in order.Where(each => set.Meets(Masks.Bit(each))).Take(most)) yield return prefix |= Masks.Bit(each);
    }
}
