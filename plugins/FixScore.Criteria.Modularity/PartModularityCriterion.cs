namespace FixScore.Criteria.Modularity;

/// <summary>Whether a part is a module: replaced alone, and connected by what parts without desoldering.</summary>
/// <remarks>
/// <para>Two things count. How many other parts are replaced with it, because integral joints tie them or because the spare
/// is only sold with them (of several spares the one that brings fewest); parts that are inert do not count, fewer is better.
/// And the worst electrical connection between the part's group, with what rides on it, and parts that stay: joints of kind
/// contact, connector, solder and weld; a connector of type soldered-wire is solder, of type spring-contact a contact.
/// Option <c>combine</c> takes the lower of both points or their mean.</para>
/// <para>A connector of unknown type may be soldered. A spare that is not listed may be sold with any others, unless the
/// list is empty or option <c>bundles</c> is off; a spare listed without <c>onlyBundledWith</c> is sold alone. A part of whose
/// joints the record says nothing may connect in any way. Without joints the group is not known, and so the answer is not.</para>
/// <para>Source: own judgement, no source. Thread safe.</para>
/// </remarks>
public sealed class PartModularityCriterion : IPartCriterion, IDesignAdvisor
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "part-modularity", 1, "Part modularity", "other parts replaced together with a part, and how it connects", "parts",
        Direction.LessIsBetter, "own judgement, no source",
        ["joints[].kind", "joints[].integral", "joints[].connector.type", "parts[].inert", "parts[].on", "spares[].onlyBundledWith"],
        PartModularityOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(PartContext context)
    {
        if (!context.Case.Record.Joints.IsRecorded) return Outcome.Unknown(new Missing(Pointer.Root, "joints"));
        var facts = PartModularityFacts.Of(context.Case, context.Part, context.Get(PartModularityOptions.Bundles));
        var together = context.Points(PartModularityOptions.TogetherBands, facts.Together.Count);
        var connection = PointsOfConnection(context, facts);
        var reasons = new PartModularityReasons(context);
        return Outcome.Scored(Combined(context, together, connection), [.. reasons.Together(facts, together), .. reasons.Connections(facts)]) with
        {
            Missing = [.. reasons.Missing(facts)],
        };
    }

    /// <inheritdoc/>
    public IEnumerable<DesignChange> Suggest(DeviceContext context) => PartModularityChanges.Of(context);

    static Interval PointsOfConnection(PartContext context, PartModularityFacts facts)
    {
        if (!facts.IsDescribed) return context.Points(PartModularityOptions.Connection, Word.All<ConnectionKind>());
        if (facts.Connections.IsEmpty) return context.Points(PartModularityOptions.Connection, Word.Of(ConnectionKind.None));
        Interval[] points = [.. facts.Connections.Select(connection =>
            context.Points(PartModularityOptions.Connection, connection.Possible.Select(Word.Of)))];
        return new(points.Min(each => each.Low), points.Min(each => each.High));
    }

    static Interval Combined(PartContext context, Interval a, Interval b) => context.Get(PartModularityOptions.Combine) == Combine.Mean
        ? new((a.Low + b.Low) / 2, (a.High + b.High) / 2)
        : new(Math.Min(a.Low, b.Low), Math.Min(a.High, b.High));
}
