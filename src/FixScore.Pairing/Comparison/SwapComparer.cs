using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Comparison;

/// <summary>Compares what was seen of the same swap along one axis: one side as the base, each other against it.</summary>
sealed class SwapComparer(TeardownCase source, UnitKinds units, Axis axis)
{
    public IEnumerable<ComparedFunction> Compare(ImmutableArray<Observation> seen) =>
        from same in seen.Where(each => axis.SideOf(each) is not null).GroupBy(axis.SameOf)
        let sides = same.GroupBy(each => axis.SideOf(each)!, StringComparer.Ordinal).ToImmutableArray()
        let first = axis.Bases.Select(word => sides.FirstOrDefault(side => side.Key == word)).FirstOrDefault(side => side is not null)
        where first is not null
        from other in sides.OrderBy(side => axis.Bases.IndexOf(side.Key))
        where other.Key != first.Key
        select Compared(same.First().Swap, same.Key.Function, SideOf(first), SideOf(other));

    static ComparedSide SideOf(IGrouping<string, Observation> seen) => new(
        seen.Key,
        seen.First().Context,
        new([.. seen.SelectMany(each => each.Results).Distinct().Order()]),
        [.. seen.Select(each => each.Trial)]);

    ComparedFunction Compared(Swap swap, string function, ComparedSide first, ComparedSide second)
    {
        var fares = Against(first.Result, second.Result);
        var codes = units.ModelCodesOf(first.Trials.Concat(second.Trials));
        var finding = new ComparisonFindings(source, swap, function, codes).Of(axis.By, first, second, fares);
        return new(axis.By, swap.Parts, function, first, second, fares, codes, finding);
    }

    static Fares Against(OneOf<SwapResult> first, OneOf<SwapResult> second)
    {
        if (first.IsExact && first == second) return Fares.Alike;
        if (second.Stated.Max() < first.Stated.Min()) return Fares.Better;
        return second.Stated.Min() > first.Stated.Max() ? Fares.Worse : Fares.Open;
    }
}
