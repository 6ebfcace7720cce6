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

    /// <summary>Whether the goal is reached.</summary>
    public bool IsGoal => holds[plan.Goal];

    /// <summary>Looks at a state. False when the goal cannot be reached from it.</summary>
    public bool Look(ReadOnlySpan<ulong> done, int last)
    {
        plan.Hold(done, holds);
        if (IsGoal) return true;
        Bury(done, last);
        return Ask(done, last, mustOnly: true, Required) && Ask(done, last, mustOnly: false, Helpful);
    }

    /// <summary>Whether an operation can be done now.</summary>
    public bool IsReady(int work, int last) => holds[plan.NeedOf[work]] && (plan.Before[work] < 0 || plan.Before[work] == last);

    // What must directly follow something that was done and left can never be done.
    void Bury(ReadOnlySpan<ulong> done, int last)
    {
        Array.Clear(dead);
        for (var work = 0; work < plan.Works.Length; work++)
            if (plan.Before[work] is >= 0 and var before && before != last && Masks.Has(done, before) && !Masks.Has(done, work)) Masks.Add(dead, work);
    }

    bool Ask(ReadOnlySpan<ulong> done, int last, bool mustOnly, ulong[] found)
    {
        Array.Clear(found);
        Array.Clear(asked);
        open.Push(plan.Goal);
        for (var work = 0; !mustOnly && work < plan.Works.Length; work++)
            if (price.MayOpen(work) && !Masks.Has(done, work) && !Masks.Has(dead, work)) Want(work, last, done, found);
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
                if (candidates == 1) Want(only, last, done, found);
                else if (!mustOnly) WantAll(plan.Fact(row), last, done, found);
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

    void WantAll(ReadOnlySpan<ulong> fact, int last, ReadOnlySpan<ulong> done, ulong[] found)
    {
        for (var work = Masks.Next(fact, 0); work >= 0; work = Masks.Next(fact, work + 1))
            if (!Masks.Has(done, work) && !Masks.Has(dead, work)) Want(work, last, done, found);
    }

    void Want(int work, int last, ReadOnlySpan<ulong> done, ulong[] found)
    {
        for (; work >= 0 && !Masks.Has(found, work) && !Masks.Has(done, work); work = plan.Before[work])
        {
            Masks.Add(found, work);
            open.Push(plan.NeedOf[work]);
        }
    }
}
