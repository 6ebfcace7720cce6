using System.Numerics;

namespace FixScore.Disassembly.Search;

/// <summary>The states a search came to, each once: what was done, the bench, the operation just before where that matters.</summary>
sealed class States(int stride)
{
    int[] slots = NewSlots(1 << 10);
    ulong[] done = new ulong[stride << 9];
    State[] states = new State[1 << 9];

    public int Count { get; private set; }

    public ReadOnlySpan<ulong> Done(int index) => done.AsSpan(index * stride, stride);

    public ref State this[int index] => ref states[index];

    /// <summary>The state with this key, added when it is new.</summary>
    public int Find(ReadOnlySpan<ulong> what, int bench, int last, out bool added)
    {
        if (Count * 2 > slots.Length) Grow();
        var slot = Hash(what, bench, last) & (slots.Length - 1);
        for (; slots[slot] >= 0; slot = (slot + 1) & (slots.Length - 1))
        {
            ref var state = ref states[slots[slot]];
            if (state.Bench == bench && state.Last == last && Done(slots[slot]).SequenceEqual(what))
            {
                added = false;
                return slots[slot];
            }
        }
        added = true;
        slots[slot] = Count;
        return Add(what, bench, last);
    }

    int Add(ReadOnlySpan<ulong> what, int bench, int last)
    {
        if (Count == states.Length)
        {
            Array.Resize(ref states, Count * 2);
            Array.Resize(ref done, Count * 2 * stride);
        }
        what.CopyTo(done.AsSpan(Count * stride));
        states[Count] = new() { Bench = bench, Last = last, Parent = -1 };
        return Count++;
    }

    void Grow()
    {
        slots = NewSlots(slots.Length * 2);
        for (var i = 0; i < Count; i++)
        {
            var slot = Hash(Done(i), states[i].Bench, states[i].Last) & (slots.Length - 1);
            while (slots[slot] >= 0) slot = (slot + 1) & (slots.Length - 1);
            slots[slot] = i;
        }
    }

    static int Hash(ReadOnlySpan<ulong> what, int bench, int last)
    {
        unchecked
        {
            var hash = (ulong)(uint)bench * 0x9E3779B97F4A7C15 + (ulong)(uint)last;
            foreach (var word in what) hash = BitOperations.RotateLeft(hash ^ word, 29) * 0xBF58476D1CE4E5B9;
            return (int)((hash ^ (hash >> 32)) & int.MaxValue);
        }
    }

    static int[] NewSlots(int count)
    {
        var slots = new int[count];
        Array.Fill(slots, -1);
        return slots;
    }
}

/// <summary>How a state was come to.</summary>
struct State
{
    public int Bench, Last, Parent;
    public long Move;
    public Toll Paid;
}
