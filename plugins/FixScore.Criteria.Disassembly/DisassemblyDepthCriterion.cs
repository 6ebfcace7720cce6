namespace FixScore.Criteria.Disassembly;

/// <summary>How many steps free a part from the closed device.</summary>
/// <remarks>
/// <para>A step ends with the removal of a part or with a change of tool (Regulation (EU) 2023/1669 Annex I (20), Annex IV
/// point 5). Counted is the shortest route, or the way that option <c>route</c> names; fewer is better. Where replacing the
/// part takes a notification or an authorisation through the maker's server, each adds the steps of its option: none by
/// default, five each in that regulation. They are added to operations as well when these are counted. An inert part
/// carries no code and adds none.</para>
/// <para>A part that only damage frees, or that was found impossible to reach, gets the lowest of the scale, whatever option
/// <c>noLevel</c> says. Unknown is a part of which the record does not tell how it comes free. Unknown tools give a range of
/// steps, from bare hands to one tool of its own, which several tools at once would exceed: losing that observation may
/// narrow, so that tools are not listed as read. Unknown demands give a range of what is added; a route that was not proven
/// shortest the range from what is proven to what was found. Where option <c>route</c> names a way that nobody recorded,
/// the shortest stands in.</para>
/// <para>Source: Regulation (EU) 2023/1669 Annex IV point 5; EN 45554:2020 has the same idea of a step. Thread safe.</para>
/// </remarks>
public sealed class DisassemblyDepthCriterion : IPartCriterion, IDesignAdvisor
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "disassembly-depth", 1, "Disassembly depth", "steps that free a part from the closed device", "steps",
        Direction.LessIsBetter, "Regulation (EU) 2023/1669 Annex I (20) and Annex IV point 5",
        ["operations", "joints", "parts[].on", "parts[].reach", "parts[].serialised", "sequences"],
        DisassemblyDepthOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(PartContext context)
    {
        var facts = DisassemblyDepthFacts.Of(context);
        if (WayReasons.Barred(context, facts.Judged.Route) is { } barred) return barred;
        var points = context.Points(DisassemblyDepthOptions.Bands, facts.Depth);
        return Outcome.Scored(points, [.. DisassemblyDepthReasons.Of(context, facts, points)]) with
        {
            Missing = [.. DisassemblyDepthReasons.Missing(context, facts)],
        };
    }

    /// <inheritdoc/>
    public IEnumerable<DesignChange> Suggest(DeviceContext context) => DisassemblyDepthChanges.Of(context);
}
