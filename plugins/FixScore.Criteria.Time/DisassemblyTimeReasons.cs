using System.Collections.Immutable;
using System.Globalization;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Time;

/// <summary>What <see cref="DisassemblyTimeCriterion"/> says.</summary>
sealed class DisassemblyTimeReasons(PartContext context)
{
    readonly TeardownCase source = context.Case;
    readonly Part part = context.Part;

    public ImmutableArray<Reason> NotReachable(Route route, decimal points) =>
    [
        Reason.Of("unreachable", "No recorded route frees part {part} without damage.", [source.At(part)], ("part", part.Id)) with { Points = points },
        .. route.Why is { } why ? [why] : ImmutableArray<Reason>.Empty,
    ];

    public Missing RouteUnknown(Route route) => new(
        route.Why is { Pointers: [var at, ..] } ? at : source.At(part), route.Why?.Text ?? "operations that free the part");

    /// <summary>Totals first, those that stand for points in front; then each operation with both of its times.</summary>
    public IEnumerable<Reason> Of(DisassemblyTimeFacts facts, Basis basis, Interval points)
    {
        if (basis == Basis.Observed) yield return Observed(facts) with { Points = points };
        else yield return Estimated(facts) with { Points = points };
        if (!facts.Route.IsOptimal) yield return NotProven(facts.Route);
        if (basis == Basis.Observed) yield return Estimated(facts);
        else if (facts.Observed is not null) yield return Observed(facts);
        if (context.Get(DisassemblyTimeOptions.Waiting) != Waiting.Count) yield return WaitsLeftOut(facts);
        foreach (var stop in facts.Stops) yield return Both(stop);
    }

    public IEnumerable<Missing> Missing(DisassemblyTimeFacts facts, Basis basis) => basis == Basis.Observed
        ? facts.Stops.SelectMany(MissingTime)
        : facts.Stops.SelectMany(MissingForEstimate);

    Reason Observed(DisassemblyTimeFacts facts) => Reason.Of(
        "observed-seconds",
        facts.Route.Query.Cost == RouteCost.Seconds
            ? "Freeing part {part} takes {seconds} as observed, along the route that is fastest by the middle of its ranges: {operations}."
            : "Freeing part {part} takes {seconds} as observed, along the route with the fewest operations: {operations}.",
        [source.At(part), .. At(facts)],
        ("part", part.Id), ("seconds", Value.Of(facts.Observed!.Value, "s")), ("operations", Shown(facts)));

    Reason Estimated(DisassemblyTimeFacts facts) => Reason.Of(
        "estimated-seconds",
        "Estimate, proxy table from memory: freeing part {part} takes {seconds} along {operations}. Source: {source}; table version {version}.",
        [source.At(part), .. At(facts)],
        ("part", part.Id), ("seconds", Seconds(facts.Estimated)), ("operations", Shown(facts)),
        ("source", BasicMost.Source), ("version", BasicMost.Version));

    Reason Both(TimedStop stop) => Reason.Of(
        "operation-time", "Operation {operation}: observed {observed}, estimated {estimated}; the two are never added together.",
        [source.At(stop.Operation)],
        ("operation", stop.Operation.Id),
        ("observed", stop.Observed is { } seconds ? Value.Of(seconds, "s") : "unknown"),
        ("estimated", Seconds(stop.Estimated.Seconds)));

    Reason WaitsLeftOut(DisassemblyTimeFacts facts) => Reason.Of(
        "waiting-left-out", "Waiting with hands free is left out; the route was chosen with it.", At(facts));

    Reason NotProven(Route route) => Reason.Of(
        "not-proven", "The search met its limit: no route to part {part} costs less than {bound}, so the low end is open as far as that.",
        [source.At(part)],
        ("part", part.Id),
        ("bound", Value.Of(route.LowerBound ?? 0, route.Query.Cost == RouteCost.Seconds ? "s, waiting included" : "operations")));

    IEnumerable<Missing> MissingTime(TimedStop stop)
    {
        if (stop.Observed is null) yield return new(source.At(stop.Operation), "seconds, or footage with times");
        else if (context.Get(DisassemblyTimeOptions.Waiting) == Waiting.LeaveOut && stop.Operation.WaitSeconds is null)
            yield return new(source.At(stop.Operation), "waitSeconds");
    }

    IEnumerable<Missing> MissingForEstimate(TimedStop stop)
    {
        if (!stop.Stop.Tools.IsRecorded) yield return new(source.At(stop.Operation), "tools");
        if (stop.Estimated.High is null && stop.Operation.WaitSeconds?.Max is null && BasicMost.Of(stop.Operation.Action).IsProcess)
            yield return new(source.At(stop.Operation), "waitSeconds");
        foreach (var joint in source.Record.Joints.Where(joint => stop.Stop.Undone.Contains(joint.Id) && !joint.Count.IsExact))
            yield return new(source.At(joint), "count");
    }

    IEnumerable<Pointer> At(DisassemblyTimeFacts facts) => facts.Stops.Select(stop => source.At(stop.Operation));

    static Value Shown(DisassemblyTimeFacts facts) =>
        facts.Stops.IsEmpty ? "no operation" : string.Join(", ", facts.Stops.Select(stop => stop.Operation.Id));

    static Value Seconds(Quantity seconds) => seconds is { Min: { } low, Max: { } high }
        ? Value.Of(new Interval(low, high), "s")
        : string.Create(CultureInfo.InvariantCulture, $"at least {seconds.Min:0.####} s");
}
