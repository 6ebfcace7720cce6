using System.Collections.Immutable;
using FixScore.Disassembly;

namespace FixScore.Criteria.Safety;

/// <summary>The hazards that somebody meets who frees a part along the shortest route.</summary>
/// <remarks>
/// <para>Met are the hazards recorded for the operations of the route that is shortest in steps, for the parts they take out
/// or move, and for the part with its group; a tool with <c>heatC</c> and the action heat bring a hot surface, a tool with a
/// solvent and the action apply-solvent something that burns or fumes, or both. A lithium cell in an operation that is hot,
/// or done directly after heating, is a hazard of its own, <c>heated-cell</c>. The worst counts by option <c>levels</c>, or by
/// option <c>combine</c> the number of different hazards of the format.</para>
/// <para>Where no hazards were recorded for an operation or a part, any may be there, unless option <c>hazardsUnknown</c>
/// takes them as none. Where unknown tools on the route, or the limit of the search, leave open which route is the shortest or
/// what is met on it, only the hazards of the part's group are sure and any may come on top.</para>
/// <para>A part that cannot be freed without damage has the lowest of the scale. Where the record does not tell how it comes
/// free, the answer is unknown. The criterion only scores; it is no instruction for safe work.</para>
/// <para>Source: own judgement, no source. Thread safe.</para>
/// </remarks>
public sealed class HazardExposureCriterion : IPartCriterion
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "hazard-exposure", 1, "Hazard exposure", "hazards met on the shortest route to the part", "hazards", Direction.LessIsBetter,
        "own judgement, no source",
        [
            "operations", "operations[].action", "operations[].tools", "operations[].orTools", "operations[].hazards", "operations[].after",
            "operations[].directlyAfter", "operations[].undoes", "operations[].moves", "operations[].holdsBy", "operations[].removes",
            "operations[].damages", "operations[].phase", "milestones", "tools", "tools[].heatC", "tools[].solvent", "parts[].hazards", "parts[].on",
            "parts[].reach", "joints", "joints[].joins", "joints[].kind", "joints[].integral", "joints[].under",
        ],
        HazardExposureOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(PartContext context)
    {
        var route = context.Case.RouteTo(context.Part.Id);
        var reasons = new HazardExposureReasons(context);
        return route.Reachability switch
        {
            Reachability.Unreachable => Outcome.Scored(context.Scale.Min, reasons.Unreachable(route, context.Scale.Min)),
            Reachability.Unknown => Outcome.Unknown(reasons.RouteUnknown(route)),
            _ => Met(context, HazardExposureFacts.Of(context.Case, context.Part, route), reasons),
        };
    }

    static Outcome Met(PartContext context, HazardExposureFacts facts, HazardExposureReasons reasons)
    {
        var widens = context.Get(HazardExposureOptions.HazardsUnknown) == WhenHazardsUnknown.Widen;
        var counts = context.Get(HazardExposureOptions.Combine) == Combine.Count;
        var count = facts.Count(widens);
        var points = counts ? context.Points(HazardExposureOptions.CountBands, count) : Worst(context, facts, widens);
        return Outcome.Scored(
            points,
            [
                .. counts ? [reasons.Count(facts, count, points)] : ImmutableArray<Reason>.Empty,
                .. reasons.Of(facts, words => counts ? null : context.Points(HazardExposureOptions.Levels, words)),
            ]) with { Missing = [.. reasons.Missing(facts)] };
    }

    static Interval Worst(PartContext context, HazardExposureFacts facts, bool widens)
    {
        var open = facts.IsOpen || (widens && !facts.Unlisted.IsEmpty);
        ImmutableArray<string>[] met = [.. facts.Met.Select(each => each.Words), .. open ? [HazardWords.Any] : Array.Empty<ImmutableArray<string>>()];
        if (met.Length == 0) met = [[HazardWords.None]];
        Interval[] points = [.. met.Select(words => context.Points(HazardExposureOptions.Levels, words))];
        return new(points.Min(each => each.Low), points.Min(each => each.High));
    }
}
