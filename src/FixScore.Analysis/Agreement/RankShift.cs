using System.Collections.Immutable;
using System.Linq;

namespace FixScore.Analysis.Agreement;

/// <summary>How far units move between two rankings, in places. Exact.</summary>
/// <remarks>Saisana, Saltelli and Tarantola, J. R. Statist. Soc. A 168, 2005: average shift in country rankings. Immutable and thread safe.</remarks>
/// <param name="Mean">Mean of the places moved, without sign.</param>
/// <param name="Largest">The most places that a unit moved.</param>
/// <param name="Movers">Numbers of the units that moved most; empty where none moved.</param>
public sealed record RankShift(decimal Mean, decimal Largest, ImmutableArray<int> Movers)
{
    /// <summary>Compares ranks, such as <see cref="Ranking.Ranks.Middles"/>.</summary>
    /// <param name="first">A rank for each unit, one unit at least.</param>
    /// <param name="second">The same units in the other ranking.</param>
    /// <exception cref="ArgumentException">They differ in length, or are empty.</exception>
    public static RankShift Between(ImmutableArray<decimal> first, ImmutableArray<decimal> second)
    {
        if (first.IsEmpty || first.Length != second.Length) throw new ArgumentException("Both must rank the same units.", nameof(second));
        var shifts = first.Zip(second, (one, other) => Math.Abs(one - other)).ToArray();
        var largest = shifts.Max();
        return new(shifts.Average(), largest, largest == 0m ? [] : [.. shifts.Index().Where(shift => shift.Item == largest).Select(shift => shift.Index)]);
    }
}
