using System.Numerics;

namespace FixScore.Pairing.Planning;

/// <summary>Sets of up to 64 candidates as bits.</summary>
static class Masks
{
    public static ulong Bit(int index) => 1UL << index;

    public static int Size(this ulong set) => BitOperations.PopCount(set);

    public static int First(this ulong set) => BitOperations.TrailingZeroCount(set);

    public static bool Meets(this ulong set, ulong other) => (set & other) != 0;

    public static bool Within(this ulong set, ulong other) => (set & ~other) == 0;

    public static ulong All(int count) => count == 64 ? ulong.MaxValue : Bit(count) - 1;

    public static IEnumerable<int> Members(this ulong set)
    {
        for (; set != 0; set &= set - 1) yield return set.First();
    }

    public static ulong Union(this IEnumerable<int> members) => members.Aggregate(0UL, (set, member) => set | Bit(member));
}
