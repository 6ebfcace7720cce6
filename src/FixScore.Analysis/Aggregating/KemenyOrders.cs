using System.Collections.Immutable;

namespace FixScore.Analysis.Aggregating;

/// <summary>The orders of all units that have the most support.</summary>
/// <param name="Support">Their support.</param>
/// <param name="Count">How many there are.</param>
/// <param name="Orders">Numbers of units, best first; in the order of these numbers. Fewer than <paramref name="Count"/> when not all were asked for.</param>
public sealed record KemenyOrders(decimal Support, long Count, ImmutableArray<ImmutableArray<int>> Orders)
{
    /// <summary>The most units for which the best orders are searched: the work doubles with each.</summary>
    public const int MostUnits = 16;
}
