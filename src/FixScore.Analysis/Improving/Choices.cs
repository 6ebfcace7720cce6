using System.Collections.Immutable;

namespace FixScore.Analysis.Improving;

/// <summary>Sets of candidates as bits, and which of them exclude each other.</summary>
/// <param name="excluded">For each candidate the ones it cannot be combined with.</param>
sealed class Choices(ImmutableArray<UInt128> excluded)
{
    /// <summary>The most candidates that a set can tell apart.</summary>
    public const int Most = 128;

    public static UInt128 Bit(int candidate) => UInt128.One << candidate;

    public static IEnumerable<int> In(UInt128 set)
    {
        for (; set != 0; set &= set - 1) yield return (int)UInt128.TrailingZeroCount(set);
    }

    public static int Count(UInt128 set) => (int)UInt128.PopCount(set);

    /// <summary>All sets of a size among some candidates, none excluding another, in the order of the candidates.</summary>
    public IEnumerable<UInt128> Of(UInt128 among, int size)
    {
        if (size == 0)
        {
            yield return 0;
            yield break;
        }
        for (var rest = among; Count(rest) >= size;)
        {
            var first = (int)UInt128.TrailingZeroCount(rest);
            rest &= rest - 1;
            foreach (var others in Of(rest & ~excluded[first], size - 1)) yield return Bit(first) | others;
        }
    }

    /// <summary>Whether no candidate of one set excludes one of another.</summary>
    public bool Agree(UInt128 a, UInt128 b) => In(a).All(candidate => (excluded[candidate] & b) == 0);
}
