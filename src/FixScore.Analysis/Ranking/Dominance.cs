using System.Collections.Immutable;

namespace FixScore.Analysis.Ranking;

/// <summary>A unit that is above another.</summary>
/// <param name="Over">Number of the one.</param>
/// <param name="Under">Number of the other.</param>
public readonly record struct DominancePair(int Over, int Under);

/// <summary>What holds under any weights: a unit that is no worse on any criterion and better on one is never below, whatever rises with every criterion adds them up.</summary>
/// <remarks>V. Pareto's order. More is better. Immutable and thread safe.</remarks>
/// <param name="Pairs">Pairs for certain, whatever open values turn out to be; by number.</param>
/// <param name="Possible">Pairs that some of what open values can be would make; the certain ones are among them.</param>
/// <param name="Efficient">Numbers of the units that none is above for certain.</param>
/// <param name="Layers">The efficient units, then those that are efficient once these are gone, and so on.</param>
public sealed record Dominance(
    ImmutableArray<DominancePair> Pairs, ImmutableArray<DominancePair> Possible, ImmutableArray<int> Efficient, ImmutableArray<ImmutableArray<int>> Layers)
{
    /// <summary>Compares every unit with every other.</summary>
    /// <param name="table">Values, more is better.</param>
    public static Dominance Of(UnitTable table)
    {
        var pairs = Where(table, IsAboveForCertain);
        var layers = LayersOf(table.Units.Length, pairs);
        return new(pairs, Where(table, CanBeAbove), layers.IsEmpty ? [] : layers[0], layers);
    }

    static ImmutableArray<DominancePair> Where(UnitTable table, Func<ImmutableArray<Interval>, ImmutableArray<Interval>, bool> holds) =>
        [.. from over in Enumerable.Range(0, table.Units.Length)
            from under in Enumerable.Range(0, table.Units.Length)
            where over != under && holds(table.Rows[over], table.Rows[under])
            select new DominancePair(over, under)];

    static bool IsAboveForCertain(ImmutableArray<Interval> over, ImmutableArray<Interval> under) =>
        over.Zip(under).All(pair => pair.First.Low >= pair.Second.High) && over.Zip(under).Any(pair => pair.First.Low > pair.Second.High);

    static bool CanBeAbove(ImmutableArray<Interval> over, ImmutableArray<Interval> under) =>
        over.Zip(under).All(pair => pair.First.High >= pair.Second.Low) && over.Zip(under).Any(pair => pair.First.High > pair.Second.Low);

    static ImmutableArray<ImmutableArray<int>> LayersOf(int units, ImmutableArray<DominancePair> pairs)
    {
        var layers = ImmutableArray.CreateBuilder<ImmutableArray<int>>();
        var left = Enumerable.Range(0, units).ToArray();
        while (left.Length > 0)
        {
            layers.Add([.. left.Where(unit => !pairs.Any(pair => pair.Under == unit && left.Contains(pair.Over)))]);
            left = [.. left.Except(layers[^1])];
        }
        return layers.DrainToImmutable();
    }
}
