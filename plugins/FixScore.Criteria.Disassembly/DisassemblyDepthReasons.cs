using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Disassembly;

/// <summary>What <see cref="DisassemblyDepthCriterion"/> says.</summary>
static class DisassemblyDepthReasons
{
    public static IEnumerable<Reason> Of(PartContext context, DisassemblyDepthFacts facts, Interval points) =>
    [
        Depth(context, facts) with { Points = points },
        .. facts.Judged.All.Select(way => OfWay(context, facts.Judged, way)),
        .. WayReasons.Of(context, facts.Judged),
        .. facts.Added.High > 0 ? [Added(context, facts)] : Array.Empty<Reason>(),
        .. facts.Judged.Route.Recorded.Select(recorded => Beside(context, recorded)),
        .. Harm(context, facts.Judged.Route),
    ];

    public static IEnumerable<Missing> Missing(PartContext context, DisassemblyDepthFacts facts)
    {
        foreach (var operation in facts.Judged.All.SelectMany(way => way.Stops).Where(stop => !stop.Steps.IsExact && !stop.Tools.IsRecorded)
            .Select(stop => stop.Operation).DistinctBy(operation => operation.Id, StringComparer.Ordinal))
            yield return new(context.Case.At(operation), "tools");
        if (!facts.Added.IsExact)
            yield return new(context.Case.At(context.Part), "serialised: whether the maker demands notification or authorisation when the part is replaced");
    }

    static Reason Depth(PartContext context, DisassemblyDepthFacts facts) => Reason.Of(
        "depth", "Part {part} lies {depth} deep.", [context.Case.At(context.Part)],
        ("part", context.Part.Id), ("depth", Value.Of(facts.Depth, Word.Of(context.Get(DisassemblyDepthOptions.Cost)))));

    static Reason OfWay(PartContext context, JudgedWays judged, Way way) => Reason.Of(
        "way", "The {route} way to part {part} takes {steps} steps in {operations} operations: {sequence}; tools: {tools}.",
        [.. way.Stops.Select(stop => context.Case.At(stop.Operation))],
        ("route", WayReasons.NameOf(context, judged)), ("part", context.Part.Id), ("steps", way.Steps), ("operations", way.Stops.Length),
        ("sequence", WayReasons.Ids(way.Stops)), ("tools", WayReasons.Joined(way.Tools)));

    static Reason Added(PartContext context, DisassemblyDepthFacts facts) => Reason.Of(
        "remote-demands", "Replacing part {part} adds {notification} steps for notifying the maker and {authorisation} for the maker's authorisation.",
        [context.Case.At(context.Part)],
        ("part", context.Part.Id), ("notification", facts.Notification), ("authorisation", facts.Authorisation));

    static Reason Beside(PartContext context, RecordedWay recorded) => Reason.Of(
        "recorded-way", "The way {sequence} recorded by the {author} takes {steps} steps in {operations} operations.", [context.Case.At(recorded.Sequence)],
        ("sequence", recorded.Sequence.Id), ("author", Word.Of(recorded.Sequence.By)), ("steps", recorded.Way.Steps),
        ("operations", recorded.Way.Stops.Length));

    static IEnumerable<Reason> Harm(PartContext context, Route route)
    {
        if (!route.Damages.IsEmpty)
            yield return Reason.Of(
                "damages-itself", "The shortest way to part {part} harms {harmed}.", [.. At(context, route.Damages)],
                ("part", context.Part.Id), ("harmed", WayReasons.Joined(route.Damages)));
        if (!route.AtRisk.IsEmpty)
            yield return Reason.Of(
                "at-risk", "On the shortest way to part {part}, {harmed} came to harm on some unit.", [.. At(context, route.AtRisk)],
                ("part", context.Part.Id), ("harmed", WayReasons.Joined(route.AtRisk)));
    }

    static IEnumerable<Pointer> At(PartContext context, IEnumerable<string> ids) =>
        from entry in context.Case.Record.Parts.Cast<NamedEntry>().Concat(context.Case.Record.Joints)
        where ids.Contains(entry.Id)
        select context.Case.At(entry);
}
