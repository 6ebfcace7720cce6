using System.Collections.Immutable;
using System.Numerics;

namespace FixScore.Analysis.Aggregating;

/// <summary>Exact search over sets of units: the best order of a set is a first unit followed by the best order of the rest.</summary>
/// <remarks>R. Bellman; M. Held and R. M. Karp, A dynamic programming approach to sequencing problems, 1962 (from memory).</remarks>
sealed class KemenySearch
{
    readonly SupportMatrix matrix;
    readonly decimal[] best;
    readonly long[] count;

    public KemenySearch(SupportMatrix matrix)
    {
        if (matrix.Units.Length > KemenyOrders.MostUnits) throw new InvalidOperationException($"More than {KemenyOrders.MostUnits} units.");
        this.matrix = matrix;
        best = new decimal[1 << matrix.Units.Length];
        count = new long[best.Length];
        count[0] = 1;
        for (var set = 1; set < best.Length; set++) Settle(set);
    }

    public KemenyOrders Best(int most) => new(best[^1], count[^1], [.. Orders(best.Length - 1).Take(most).Select(order => order.ToImmutableArray())]);

    void Settle(int set)
    {
        best[set] = Members(set).Max(first => With(first, set));
        count[set] = Firsts(set).Sum(first => count[set ^ (1 << first)]);
    }

    IEnumerable<IEnumerable<int>> Orders(int set) =>
        set == 0 ? [[]] : Firsts(set).SelectMany(first => Orders(set ^ (1 << first)).Select(rest => rest.Prepend(first)));

    IEnumerable<int> Firsts(int set) => Members(set).Where(first => With(first, set) == best[set]);

    decimal With(int first, int set)
    {
        var rest = set ^ (1 << first);
        return best[rest] + Members(rest).Sum(under => matrix[first, under]);
    }

    static IEnumerable<int> Members(int set)
    {
        for (; set != 0; set &= set - 1) yield return BitOperations.TrailingZeroCount(set);
    }
}
