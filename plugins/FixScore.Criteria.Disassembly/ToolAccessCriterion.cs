using FixScore.Disassembly;

namespace FixScore.Criteria.Disassembly;

/// <summary>How easily the tools are had that a part takes: the worst of them counts.</summary>
/// <remarks>
/// <para>Judged are the tools used on the shortest route or the way that option <c>route</c> names: from the closed device,
/// or with option <c>from</c> only after the last removal of another part of the roles judged, as Regulation (EU) 2023/1669
/// Annex IV point 5 asks. Moving a part away counts as its removal (Annex I (20)); parts replaced with the judged one, or
/// carried away by it, are not others. Of tools that do as well those are judged that take fewest steps.</para>
/// <para>Of a tool's class and its supply the better counts, see <see cref="ToolLevels"/>. Specialised tools have the points
/// of commercial ones by default, as in that law, which has no level for proprietary ones. An operation whose tools are
/// unknown may take any; with unknown tools the fewest and the most steps may lead two ways; both count, none between. A
/// part that only damage frees gets the lowest of the scale; a route that is unknown leaves the answer unknown; one that was
/// not proven shortest is judged as found.</para>
/// <para>Source: Regulation (EU) 2023/1669 Annex I (42) to (44) and Annex IV point 5. Thread safe.</para>
/// </remarks>
public sealed class ToolAccessCriterion : IPartCriterion, IDesignAdvisor
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "tool-access", 1, "Tool access", "tool used for a part that is hardest to have", "level",
        Direction.MoreIsBetter, "Regulation (EU) 2023/1669 Annex I (42) to (44) and Annex IV point 5",
        ["operations", "operations[].tools", "joints", "parts[].on", "parts[].reach", "tools", "tools[].class", "tools[].suppliedWith", "sequences"],
        ToolAccessOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(PartContext context)
    {
        var facts = ToolAccessFacts.Of(context);
        if (WayReasons.Barred(context, facts.Judged.Route) is { } barred) return barred;
        var points = facts.Works.Select(work => PointsOf(context, work));
        return Outcome.Scored(Interval.HullOf(points)!.Value, [.. ToolAccessReasons.Of(context, facts)]) with
        {
            Missing = [.. ToolAccessReasons.Missing(context, facts)],
        };
    }

    /// <inheritdoc/>
    public IEnumerable<DesignChange> Suggest(DeviceContext context) => ToolAccessChanges.Of(context);

    internal static Interval PointsOf(PartContext context, IEnumerable<ToolLevel> possible) =>
        context.Points(ToolAccessOptions.Levels, possible.Select(Word.Of));

    static Interval PointsOf(PartContext context, ToolsOfWork work) => Worst.Of(
        [
            .. work.Used.Select(each => PointsOf(context, each.Possible)),
            .. work.Unknown.Select(_ => PointsOf(context, Enum.GetValues<ToolLevel>())),
        ],
        PointsOf(context, [ToolLevel.None]));
}
