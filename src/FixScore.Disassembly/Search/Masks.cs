using System.Numerics;

namespace FixScore.Disassembly.Search;

/// <summary>Sets of small numbers as words of bits.</summary>
static class Masks
{
    public static bool Has(ReadOnlySpan<ulong> mask, int index) => (mask[index >> 6] & (1UL << index)) != 0;

    public static void Add(Span<ulong> mask, int index) => mask[index >> 6] |= 1UL << index;

    public static bool Meet(ReadOnlySpan<ulong> one, ReadOnlySpan<ulong> other)
    {
        for (var i = 0; i < one.Length; i++)
            if ((one[i] & other[i]) != 0) return true;
        return false;
    }

    public static bool HasAll(ReadOnlySpan<ulong> mask, ReadOnlySpan<ulong> members)
    {
        for (var i = 0; i < mask.Length; i++)
            if ((members[i] & ~mask[i]) != 0) return false;
        return true;
    }

    public static int Count(ReadOnlySpan<ulong> mask)
    {
        var count = 0;
        foreach (var word in mask) count += BitOperations.PopCount(word);
        return count;
    }

    /// <summary>The least member from <paramref name="from"/> on; -1 when there is none.</summary>
    public static int Next(ReadOnlySpan<ulong> mask, int from)
    {
        for (var i = from >> 6; i < mask.Length; i++)
        {
            var word = i == from >> 6 ? mask[i] & (ulong.MaxValue << from) : mask[i];
            if (word != 0) return i * 64 + BitOperations.TrailingZeroCount(word);
        }
        return -1;
    }
}
