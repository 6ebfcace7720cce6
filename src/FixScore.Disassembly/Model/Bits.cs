using System.Numerics;

namespace FixScore.Disassembly.Model;

/// <summary>A set of small numbers of a size fixed at the start. Changed only while it is built.</summary>
sealed class Bits(int size)
{
    readonly ulong[] words = new ulong[(size + 63) / 64];

    public int Size => size;

    public ReadOnlySpan<ulong> Words => words;

    public bool Has(int index) => (words[index >> 6] & (1UL << index)) != 0;

    public bool Add(int index)
    {
        var before = words[index >> 6];
        return (words[index >> 6] |= 1UL << index) != before;
    }

    public void AddAll(Bits other)
    {
        for (var i = 0; i < words.Length; i++) words[i] |= other.words[i];
    }

    public void KeepOnly(Bits other)
    {
        for (var i = 0; i < words.Length; i++) words[i] &= other.words[i];
    }

    public bool Same(Bits other) => Words.SequenceEqual(other.words);

    public Bits Copy()
    {
        var copy = new Bits(size);
        copy.AddAll(this);
        return copy;
    }

    public IEnumerable<int> All()
    {
        for (var i = 0; i < words.Length; i++)
            for (var rest = words[i]; rest != 0; rest &= rest - 1) yield return i * 64 + BitOperations.TrailingZeroCount(rest);
    }

    public static Bits Of(int size, IEnumerable<int> members)
    {
        var bits = new Bits(size);
        foreach (var member in members) bits.Add(member);
        return bits;
    }
}
