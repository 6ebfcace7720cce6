using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Cost;

/// <summary>What it takes to replace a part, besides the spare: labour and consumables along the fastest route.</summary>
/// <param name="Route">The route; reachable.</param>
/// <param name="Seconds">Seconds to take apart.</param>
/// <param name="Reassembly">Seconds to put back together.</param>
/// <param name="IsAssumed">Whether these are a multiple of the seconds to take apart.</param>
/// <param name="Consumables">What is used up.</param>
/// <param name="Bonds">Adhesives and tapes undone on the way, in the order of the record.</param>
sealed record RepairCostRatioFacts(
    Route Route, Quantity Seconds, Quantity Reassembly, bool IsAssumed, Quantity Consumables, ImmutableArray<Joint> Bonds)
{
    public static RepairCostRatioFacts Of(PartContext context, Route route, Price device)
    {
        var (record, way) = (context.Case.Record, route.Way!);
        var seconds = SecondsOf(route, context.Get(RepairCostRatioOptions.Waiting));
        var factor = context.Get(RepairCostRatioOptions.Reassembly);
        var observed = IsTheFastest(route) ? way.ReassemblySeconds : null;
        return new(
            route, seconds,
            observed is { } known ? new(known.Low, known.High) : factor > 0 ? Money.Times(seconds, factor) : Money.Any,
            observed is null && factor > 0,
            IsTheFastest(route) ? ConsumablesOf(record, way, device) : Money.Any,
            [.. record.Joints.Where(joint => joint.Kind is JointKind.Adhesive or JointKind.Tape && way.Joints.Contains(joint.Id))]);
    }

    static Quantity SecondsOf(Route route, Waiting waiting)
    {
        if (route.Seconds is null) return Money.Any;
        if (!route.IsOptimal) return new(waiting == Waiting.Count ? Math.Min(route.LowerBound ?? 0, route.Seconds.Value.Low) : 0, null);
        Interval[] each = [.. route.Way!.Stops.Select(stop => HandsOn.Of(stop.Operation, waiting)!.Value)];
        return new(each.Sum(one => one.Low), each.Sum(one => one.High));
    }

    static Quantity ConsumablesOf(TeardownRecord record, Way way, Price device) =>
        way.Consumes.Aggregate((Quantity)0, (sum, id) => Money.Plus(sum, PriceOf(record, id, device)));

    static Quantity PriceOf(TeardownRecord record, string id, Price device) =>
        Money.Comparable(record.Consumables.FirstOrDefault(each => each.Id == id)?.Price, device) ?? Money.Any;

    // Only then what lies on the route is what a repair takes.
    static bool IsTheFastest(Route route) => route.IsOptimal && route.Seconds is not null;
}
