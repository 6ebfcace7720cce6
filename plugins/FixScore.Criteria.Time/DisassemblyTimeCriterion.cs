using FixScore.Disassembly;

namespace FixScore.Criteria.Time;

/// <summary>How many seconds it takes to free a part.</summary>
/// <remarks>
/// <para><b>Observed</b> (option <c>basis</c>): along the fastest route, the one whose seconds have the lowest middle; the
/// score is the range of that route. A route on which an operation has neither seconds nor footage makes the answer unknown.
/// <b>Estimated</b>: along the route with fewest operations, so that the estimate needs no observed time, from sequences of
/// BasicMOST in an embedded table that is partly from memory. Both are said for each operation; no sum ever mixes them. The
/// wait of a process (heat, solvent, discharge) enters an estimate by the method's own column for observed process time.</para>
/// <para>Waiting with hands free counts unless option <c>waiting</c> leaves it out; an unrecorded wait is then anything from
/// none to all of the operation, or none. An estimate without waiting has none at all.</para>
/// <para>A part that cannot be freed without damage has the lowest of the scale. Where the record does not tell whether or
/// how it is freed, the answer is unknown. A route not proven fastest opens the low end.</para>
/// <para>Source: BasicMOST (Zandin, MOST Work Measurement Systems) for estimates; the points are own judgement. Thread safe.</para>
/// </remarks>
public sealed class DisassemblyTimeCriterion : IPartCriterion
{
    // The most a number of the format can be; stands for a time that nothing limits.
    const decimal Endless = 1_000_000_000_000_000m;

    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "disassembly-time", 1, "Disassembly time", "seconds to free the part", "s", Direction.LessIsBetter,
        "Estimates: BasicMOST (Zandin, MOST Work Measurement Systems), table partly from memory; points: own judgement, no source",
        [
            "operations", "operations[].action", "operations[].tools", "operations[].orTools", "operations[].after", "operations[].directlyAfter",
            "operations[].undoes", "operations[].moves", "operations[].holdsBy", "operations[].removes", "operations[].damages", "operations[].phase",
            "operations[].seconds", "operations[].waitSeconds", "operations[].footage", "milestones", "joints", "joints[].joins", "joints[].kind",
            "joints[].count", "joints[].integral", "joints[].under", "parts[].on", "parts[].reach",
        ],
        DisassemblyTimeOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(PartContext context)
    {
        var basis = context.Get(DisassemblyTimeOptions.Basis);
        var route = context.Case.RouteTo(context.Part.Id, basis == Basis.Observed ? RouteCost.Seconds : RouteCost.Operations);
        var reasons = new DisassemblyTimeReasons(context);
        return route.Reachability switch
        {
            Reachability.Unreachable => Outcome.Scored(context.Scale.Min, reasons.NotReachable(route, context.Scale.Min)),
            Reachability.Unknown => Outcome.Unknown(reasons.RouteUnknown(route)),
            _ => Timed(context, DisassemblyTimeFacts.Of(context.Case.Record, route, context.Get(DisassemblyTimeOptions.Waiting)), basis, reasons),
        };
    }

    static Outcome Timed(PartContext context, DisassemblyTimeFacts facts, Basis basis, DisassemblyTimeReasons reasons)
    {
        var seconds = basis == Basis.Observed ? facts.Observed : facts.Estimated.Within(0, Endless);
        if (seconds is not { } known) return Outcome.Unknown([.. reasons.Missing(facts, basis)]);
        var points = context.Points(DisassemblyTimeOptions.Bands, known);
        return Outcome.Scored(points, [.. reasons.Of(facts, basis, points)]) with { Missing = [.. reasons.Missing(facts, basis)] };
    }
}
