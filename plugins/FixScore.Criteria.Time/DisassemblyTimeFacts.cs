using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Time;

/// <summary>An operation on the way and its time, twice: as observed and as estimated.</summary>
/// <param name="Stop">The operation on the way.</param>
/// <param name="Observed">Seconds observed; <c>null</c> when there are none.</param>
/// <param name="Estimated">The estimate.</param>
sealed record TimedStop(Stop Stop, Interval? Observed, IndexSum Estimated)
{
    public Operation Operation => Stop.Operation;
}

/// <summary>How long it takes along a route.</summary>
/// <param name="Route">The route; reachable.</param>
/// <param name="Stops">Its operations with their times.</param>
/// <param name="Observed">Seconds observed along all of the route; <c>null</c> when an operation has none.</param>
/// <param name="Estimated">Seconds estimated along all of the route.</param>
sealed record DisassemblyTimeFacts(Route Route, ImmutableArray<TimedStop> Stops, Interval? Observed, Quantity Estimated)
{
    public static DisassemblyTimeFacts Of(TeardownRecord record, Route route, Waiting waiting)
    {
        var estimates = OperationEstimates.Of(record, route.Way!, waiting == Waiting.Count);
        ImmutableArray<TimedStop> stops =
            [.. route.Way!.Stops.Zip(estimates, (stop, estimate) => new TimedStop(stop, HandsOn.Of(stop.Operation, waiting), estimate))];
        var estimated = stops.Aggregate((IndexSum)0m, (sum, stop) => sum + stop.Estimated).Seconds;
        if (route.IsOptimal) return new(route, stops, Sum(stops), estimated);
        // Another route may be faster; the search has a bound for observed time with its waits only.
        var least = waiting == Waiting.Count && route.Query.Cost == RouteCost.Seconds ? route.LowerBound ?? 0 : 0;
        return new(route, stops, Sum(stops) is { } sum ? new Interval(Math.Min(least, sum.Low), sum.High) : null, estimated with { Min = 0 });
    }

    static Interval? Sum(ImmutableArray<TimedStop> stops) => stops.Any(stop => stop.Observed is null)
        ? null
        : new(stops.Sum(stop => stop.Observed!.Value.Low), stops.Sum(stop => stop.Observed!.Value.High));
}
