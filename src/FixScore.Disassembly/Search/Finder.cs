namespace FixScore.Disassembly.Search;

/// <summary>Counted work that searches may do together.</summary>
sealed class Allowance(int states)
{
    public int Left { get; private set; } = states;

    public bool Take() => Left > 0 && Left-- > 0;
}

/// <summary>A way found, as moves (operation and option), and what it costs.</summary>
sealed record Found(long[] Moves, Toll Paid);

/// <summary>What a search came to.</summary>
/// <param name="Best">The cheapest way found; <c>null</c> when there is none, or none was found in time.</param>
/// <param name="Bound">No way costs less.</param>
/// <param name="IsProven">Whether the allowance sufficed.</param>
sealed record Answer(Found? Best, Toll Bound, bool IsProven);

/// <summary>Best-first search with a bound that never overrates (A*; Hart, Nilsson and Raphael 1968), over what was done and the bench.</summary>
sealed class Finder(Plan plan, Price price, Landmarks landmarks, Harm harm, CancellationToken cancellation)
{
    readonly Reach reach = new(plan, price);
    readonly ulong[] scratch = new ulong[plan.Stride];

    /// <summary>The start: nothing done, nothing in hand.</summary>
    public Node Start => new(new ulong[plan.Stride], price.Start, -1, default);

    /// <summary>The cheapest way on from a state that costs no more than a limit, all told.</summary>
    public Answer From(Node start, Toll? limit, Allowance allowance)
    {
        var search = new Frontier(plan.Stride);
        search.Offer(start.Done, start.Bench, start.Last, start.Paid, -1, -1, Promise(start));
        while (search.TryNext(out var index, out var promise))
        {
            if (limit is { } most && promise > most) return new(null, promise, true);
            if (!allowance.Take()) return new(null, promise, false);
            if ((allowance.Left & 1023) == 0) cancellation.ThrowIfCancellationRequested();
            if (!reach.Look(search.Done(index), search[index].Last)) continue;
            if (reach.IsGoal) return new(new(search.MovesTo(index), search[index].Paid), search[index].Paid, true);
            if (price.Settled(search[index].Bench, reach) is var bench && bench != search[index].Bench) search.Settle(index, bench, promise);
            else Spread(search, index, limit, Promise);
        }
        return new(null, default, true);
    }

    /// <summary>Some way from the start, soon found rather than cheap: the most done comes first.</summary>
    public Found? Quick(Allowance allowance)
    {
        var search = new Frontier(plan.Stride);
        search.Offer(Start.Done, Start.Bench, Start.Last, Start.Paid, -1, -1, default);
        while (search.TryNext(out var index, out _) && allowance.Take())
        {
            if (!reach.Look(search.Done(index), search[index].Last)) continue;
            if (reach.IsGoal) return new(search.MovesTo(index), search[index].Paid);
            Spread(search, index, null, next => Rest(next.Done, next.Bench));
        }
        return null;
    }

    /// <summary>The state after a move; its cost is what was paid so far.</summary>
    public Node After(Node from, int work, int option) => After(from, work, option, new ulong[plan.Stride]);

    Node After(Node from, int work, int option, ulong[] done)
    {
        var (cost, bench) = price.Of(from.Bench, work, option);
        from.Done.CopyTo(done, 0);
        var paid = from.Paid + new Toll(cost + harm.Added(done, work), 1);
        Masks.Add(done, work);
        return new(done, bench, LastThatMatters(done, work), paid);
    }

    /// <summary>What can be done in a state, in the order of the record.</summary>
    public IReadOnlyList<int> Ready(Node node)
    {
        if (!reach.Look(node.Done, node.Last)) return [];
        return [.. Enumerable.Range(0, plan.Works.Length).Where(work => reach.IsReady(work, node.Last) && (Masks.Has(reach.Helpful, work) || Masks.Has(reach.Idle, work) || reach.MayOpen(work, node.Done)))];
    }

    /// <summary>What a way through this state costs at least.</summary>
    public Toll Promise(Node node) => node.Paid + Rest(node.Done, node.Bench);

    Toll Rest(ReadOnlySpan<ulong> done, int bench)
    {
        var open = 0;
        foreach (var each in landmarks.All)
            if (!Masks.Meet(each, done)) open++;
        return new(price.Least(done, bench), open);
    }

    void Spread(Frontier search, int index, Toll? limit, Func<Node, Toll> rank)
    {
        var node = new Node([.. search.Done(index)], search[index].Bench, search[index].Last, search[index].Paid);
        if (node.Last < 0 && Forced(node) is var (forced, with) && forced >= 0)
        {
            Go(search, index, node, forced, with, limit, rank);
            return;
        }
        for (var work = Masks.Next(reach.Helpful, 0); work >= 0; work = Masks.Next(reach.Helpful, work + 1))
            for (var option = 0; !HasTwin(work, node.Last) && reach.IsReady(work, node.Last) && option < price.Options(work); option++) Go(search, index, node, work, option, limit, rank);
        if (reach.Bare > 0 || reach.Paired > 0) SpreadIdle(search, index, node, limit, rank);
    }

    bool IsWorthIt(Node node, int work, int option) => reach.Bare > 1 || reach.Paired > 0 || price.Of(node.Bench, work, option).Cost == 0;

    // Of two that are alike, must both be done, can both be done now and lead to nothing, only the first is tried: in any
    // way they can change places.
    bool HasTwin(int work, int last)
    {
        if (!IsIdleEnd(work, last)) return false;
        for (var twin = Masks.Next(reach.Required, 0); twin >= 0 && twin < work; twin = Masks.Next(reach.Required, twin + 1))
            if (price.Kind(twin) == price.Kind(work) && IsIdleEnd(twin, last)) return true;
        return false;
    }

    bool IsIdleEnd(int work, int last) =>
        price.Kind(work) >= 0 && Masks.Has(reach.Required, work) && plan.Before[work] < 0 && !plan.HasFollowers[work]
        && !harm.Weighs(work) && !Masks.Meet(plan.Dependents[work], reach.Helpful) && reach.IsReady(work, last);

    // What nothing needs is done only to open a step, or to come to something that can; paying for the latter is worth it
    // only where more than one opener may come of it.
    void SpreadIdle(Frontier search, int index, Node node, Toll? limit, Func<Node, Toll> rank)
    {
        for (var work = 0; work < plan.Works.Length; work++)
        {
            if (Masks.Has(node.Done, work) || Masks.Has(reach.Helpful, work) || !reach.IsReady(work, node.Last)) continue;
            var opener = reach.MayOpen(work, node.Done);
            if (!opener && !Masks.Has(reach.Idle, work)) continue;
            for (var option = 0; option < price.Options(work); option++)
                if ((opener && price.OpensNow(node.Bench, work, option, reach)) || (Masks.Has(reach.Idle, work) && IsWorthIt(node, work, option))) Go(search, index, node, work, option, limit, rank);
        }
    }

    // What must be done anyway and costs nothing now is done now: one way on instead of many in other orders.
    (int Work, int Option) Forced(Node node)
    {
        for (var work = Masks.Next(reach.Required, 0); work >= 0; work = Masks.Next(reach.Required, work + 1))
            if (plan.Before[work] < 0 && !plan.HasFollowers[work] && reach.IsReady(work, -1) && price.IsBestNow(node.Bench, work, reach, out var option))
                return (work, option);
        return (-1, 0);
    }

    void Go(Frontier search, int index, Node node, int work, int option, Toll? limit, Func<Node, Toll> rank)
    {
        var next = After(node, work, option, scratch);
        var promise = rank(next);
        if (limit is { } most && promise > most) return;
        search.Offer(next.Done, next.Bench, next.Last, next.Paid, index, Moves.Of(work, option), promise);
    }

    // The operation just before matters only while something waits to follow it.
    int LastThatMatters(ReadOnlySpan<ulong> done, int work) => Masks.HasAll(done, plan.Followers[work]) ? -1 : work;
}

/// <summary>A state outside a search.</summary>
/// <param name="Done">What was done.</param>
/// <param name="Bench">The bench.</param>
/// <param name="Last">The operation just before, while something waits to follow it; else -1.</param>
/// <param name="Paid">What was paid to come here.</param>
readonly record struct Node(ulong[] Done, int Bench, int Last, Toll Paid);

/// <summary>An operation and its option as one number.</summary>
static class Moves
{
    public static long Of(int work, int option) => ((long)option << 32) | (long)work;

    public static int Work(long move) => (int)(move & int.MaxValue);

    public static int Option(long move) => (int)(move >> 32);
}
