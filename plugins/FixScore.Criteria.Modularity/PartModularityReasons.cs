using FixScore.Records;

namespace FixScore.Criteria.Modularity;

/// <summary>What <see cref="PartModularityCriterion"/> says.</summary>
sealed class PartModularityReasons(PartContext context)
{
    readonly TeardownCase source = context.Case;
    readonly Part part = context.Part;

    public IEnumerable<Reason> Together(PartModularityFacts facts, Interval points)
    {
        var together = facts.Together;
        yield return Reason.Of(
            "replaced-together", "Other parts replaced with part {part}: {others}, inert ones not counted.",
            [source.At(part), .. together.Others.Select(source.At), .. together.IntegralJoints.Select(source.At)],
            ("part", part.Id), ("others", together.Count)) with { Points = points };
        if (together.Bundle is { } spare)
            yield return Reason.Of(
                "only-in-bundle", "The spare for {part} is only sold together with {bundled}.", [source.At(spare)],
                ("part", spare.Part), ("bundled", string.Join(", ", spare.OnlyBundledWith)));
    }

    public IEnumerable<Reason> Connections(PartModularityFacts facts)
    {
        if (!facts.IsDescribed) return [];
        return facts.Connections.IsEmpty
            ? [Reason.Of("not-connected", "No recorded joint connects part {part} electrically to others.", [source.At(part)], ("part", part.Id))
                with { Points = Points(ConnectionKind.None) }]
            : facts.Connections.Select(connection => Reason.Of(
                "connection", "Part {part} is connected at {joint} by {kind}.", [source.At(connection.Joint)],
                ("part", part.Id), ("joint", connection.Joint.Id), ("kind", string.Join(" or ", connection.Possible.Select(Word.Of))))
                with { Points = Points([.. connection.Possible]) });
    }

    public IEnumerable<Missing> Missing(PartModularityFacts facts)
    {
        if (!source.Record.Joints.IsRecorded) yield return new(Pointer.Root, "joints");
        else if (!facts.IsDescribed) yield return new(source.At(part), "joints that hold it");
        if (!facts.Together.Count.IsExact && facts.Together.Bundle is null) yield return new(source.At(part), "a spare for it");
        foreach (var connection in facts.Connections.Where(connection => connection.Possible.Length > 1))
            yield return new(source.At(connection.Joint), "connector.type");
    }

    Interval Points(params IEnumerable<ConnectionKind> kinds) => context.Points(PartModularityOptions.Connection, kinds.Select(Word.Of));
}
