using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace FixScore.Analysis.Chance;

/// <summary>Draws are made and weighed in blocks, a lane each. An operation on lanes does in each what the same operation does alone, so the width of the machine's registers shows in no result.</summary>
static class Lanes
{
    /// <summary>Draws in a block; a multiple of every register's width.</summary>
    public const int Count = 16;

    /// <summary>The lanes that fill a register, from one on.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector<double> At(ReadOnlySpan<double> values, int index) =>
        Vector.LoadUnsafe(ref MemoryMarshal.GetReference(values), unchecked((nuint)(uint)index));

    /// <summary>Puts lanes back.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Put(Vector<double> lanes, Span<double> values, int index) =>
        lanes.StoreUnsafe(ref MemoryMarshal.GetReference(values), unchecked((nuint)(uint)index));

    /// <summary>Sorts rows of lanes, lane by lane, upwards: the same comparisons whatever the values (bubble sort as a network).</summary>
    public static void Sort(Span<double> values, int rows)
    {
        unchecked
        {
            for (var last = (rows - 1) * Count; last > 0; last -= Count)
                for (var at = 0; at < last; at += Vector<double>.Count) Order(values, at);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static void Order(Span<double> values, int index)
    {
        unchecked
        {
            var (upper, lower) = (At(values, index), At(values, index + Count));
            Put(Vector.Min(upper, lower), values, index);
            Put(Vector.Max(upper, lower), values, index + Count);
        }
    }
}
