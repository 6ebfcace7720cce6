namespace FixScore.Disassembly.Search;

/// <summary>What can help from a state: operations that the goal still asks for, and those it cannot do without.</summary>
/// <remarks>Holds working memory that is used again for each state; not thread safe.</remarks>
sealed class Reach(Plan plan, Price price)
{
    readonly bool[] holds = new bool[plan.Rows];
    readonly bool[] asked = new bool[plan.Rows];
    readonly ulong[] dead = new ulong[plan.Stride];
    readonly Stack<int> open = new();

    /// <summary>Operations that can help; some of them later.</summary>
    public ulong[] Helpful { get; } = new ulong[plan.Stride];

    /// <summary>Operations that every way from here does.</summary>
    public ulong[] Required { get; } = new ulong[plan.Stride];

    /// <summary>Operations that nothing needs, but that lead to others that can open a step to advantage.</summary>
    public ulong[] Idle { get; } = new ulong[plan.Stride];

    /// <summary>How many operations with bare hands can still help and leave their step open; each is an occasion for an opener.</summary>
    public int Bare { get; private set; }

    /// <summary>How many operations that can still help take up tools together that another may have left in hand.</summary>
    public int Paired { get; private set; }

    /// <summary>Whether one of those with bare hands can be done now.</summary>
    public bool IsBareReady { get; private set; }

    /// <summary>Whether the goal is reached.</summary>
    public bool IsGoal => holds[plan.Goal];

    /// <summary>Looks at a state. False when the goal cannot be reached from it.</summary>
    public bool Look(ReadOnlySpan<ulong> done, int last)
    {
        plan.Hold(done, holds);
        if (IsGoal) return true;
        Bury(done, last);
        Clear(Required);
        open.Push(plan.Goal);
        if (!Ask(done, mustOnly: true, Required)) return false;
        Clear(Helpful);
        open.Push(plan.Goal);
        Ask(done, mustOnly: false, Helpful);
        CountBare(last);
        Clear(Idle);
        if (Bare == 0 && Paired == 0) return true;
        for (var work = 0; work < plan.Works.Length; work++)
            if (MayOpen(work, done) && !IsReady(work, last)) open.Push(plan.NeedOf[work]);
        return Ask(done, mustOnly: false, Idle);
    }

    /// <summary>Whether an operation that nothing needs can open a step to advantage.</summary>
    public bool MayOpen(int work, ReadOnlySpan<ulong> done) =>
        (Bare > 0 || Paired > 0) && !Masks.Has(done, work) && !Masks.Has(dead, work) && !Masks.Has(Helpful, work) && price.MayOpen(work, this);

    /// <summary>Whether an operation can be done now.</summary>
    public bool IsReady(int work, int last) => holds[plan.NeedOf[work]] && (plan.Before[work] < 0 || plan.Before[work] == last);

    // What must directly follow something that was done and left can never be done.
    void Bury(ReadOnlySpan<ulong> done, int last)
    {
        Array.Clear(dead);
        for (var work = 0; work < plan.Works.Length; work++)
            if (plan.Before[work] is >= 0 and var before && before != last && Masks.Has(done, before) && !Masks.Has(done, work)) Masks.Add(dead, work);
    }

    void CountBare(int last)
    {
        (Bare, Paired, IsBareReady) = (0, 0, false);
        for (var work = Masks.Next(Helpful, 0); work >= 0; work = Masks.Next(Helpful, work + 1))
        {
            Paired += price.IsPaired(work) ? 1 : 0;
            Bare += price.IsBare(work) ? 1 : 0;
            IsBareReady |= (price.IsBare(work) || LeadsOn(work)) && IsReady(work, last);
        }
    }

    // Between operations that follow each other directly nothing can be put in, so what opens a later step comes before them all.
    bool LeadsOn(int work) => plan.HasFollowers[work] && price.IsByHand(work);

    void Clear(ulong[] found)
    {
        Array.Clear(found);
        Array.Clear(asked);
    }

    // Follows the needs that were pushed to the operations that bring them about; with mustOnly only where there is no choice.
    bool Ask(ReadOnlySpan<ulong> done, bool mustOnly, ulong[] found)
    {
        while (open.TryPop(out var row))
        {
            if (asked[row] || holds[row]) continue;
            asked[row] = true;
            if (plan.IsFact(row))
            {
                var candidates = Candidates(plan.Fact(row), done, out var only);
                if (candidates == 0 && mustOnly)
                {
                    open.Clear();
                    return false;
                }
                if (candidates == 1) Want(only, done, found);
                else if (!mustOnly) WantAll(plan.Fact(row), done, found);
            }
            else if (plan.IsAll(row) || !mustOnly) foreach (var part in plan.Parts(row)) open.Push(part);
        }
        return true;
    }

    int Candidates(ReadOnlySpan<ulong> fact, ReadOnlySpan<ulong> done, out int only)
    {
        var count = 0;
        only = -1;
        for (var work = Masks.Next(fact, 0); work >= 0 && count < 2; work = Masks.Next(fact, work + 1))
            if (!Masks.Has(done, work) && !Masks.Has(dead, work)) (count, only) = (count + 1, work);
        return count;
    }

    void WantAll(ReadOnlySpan<ulong> fact, ReadOnlySpan<ulong> done, ulong[] found)
    {
        for (var work = Masks.Next(fact, 0); work >= 0; work = Masks.Next(fact, work + 1))
            if (!Masks.Has(done, work) && !Masks.Has(dead, work)) Want(work, done, found);
    }

    void Want(int work, ReadOnlySpan<ulong> done, ulong[] found)
    {
        for (; work >= 0 && !Masks.Has(found, work) && !Masks.Has(done, work); work = plan.Before[work])
        {
            Masks.Add(found, work);
            open.Push(plan.NeedOf[work]);
        }
    }
}
