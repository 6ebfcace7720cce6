namespace FixScore.Disassembly.Search;

/// <summary>States waiting to be opened, the most promising first.</summary>
sealed class Frontier(int stride)
{
    readonly States states = new(stride);
    readonly PriorityQueue<(int Index, Toll Paid), Rank> queue = new();

    public ref State this[int index] => ref states[index];

    public ReadOnlySpan<ulong> Done(int index) => states.Done(index);

    /// <summary>Comes to a state; of two ways to it the cheaper stays.</summary>
    public void Offer(ReadOnlySpan<ulong> done, int bench, int last, Toll paid, int parent, long move, Toll promise)
    {
        var index = states.Find(done, bench, last, out var added);
        ref var state = ref states[index];
        if (!added && !(paid < state.Paid)) return;
        (state.Paid, state.Parent, state.Move) = (paid, parent, move);
        queue.Enqueue((index, paid), new(promise, paid.Operations));
    }

    /// <summary>The next state to open; those that were come to more cheaply since are passed over.</summary>
    public bool TryNext(out int index, out Toll promise)
    {
        while (queue.TryDequeue(out var next, out var rank))
        {
            (index, promise) = (next.Index, rank.Promise);
            if (next.Paid == states[index].Paid) return true;
        }
        (index, promise) = (-1, default);
        return false;
    }

    public long[] MovesTo(int index)
    {
        var moves = new List<long>();
        for (; states[index].Parent >= 0; index = states[index].Parent) moves.Add(states[index].Move);
        moves.Reverse();
        return [.. moves];
    }
}

/// <summary>Order of opening: least promise, then most done, since that is nearer the end.</summary>
readonly record struct Rank(Toll Promise, int Done) : IComparable<Rank>
{
    public int CompareTo(Rank other) => Promise.CompareTo(other.Promise) is var order && order != 0 ? order : other.Done.CompareTo(Done);
}
