namespace FixScore.Disassembly.Tests.Oracle;

/// <summary>Sets of small numbers as bit masks.</summary>
static class Bits
{
    public static bool Has(this int set, int index) => (set >> index & 1) != 0;

    public static bool Meets(this int set, int other) => (set & other) != 0;

    public static bool Holds(this int set, int other) => (set & other) == other;

    public static int MaskOf<T>(this IReadOnlyList<T> all, Func<T, bool> which) =>
        Enumerable.Range(0, all.Count).Where(i => which(all[i])).Aggregate(0, (set, i) => set | 1 << i);
}
