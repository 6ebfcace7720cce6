using FixScore.Disassembly;

namespace FixScore.Criteria.Disassembly;

/// <summary>What becomes of the fasteners that are undone for a part: the worst of them counts.</summary>
/// <remarks>
/// <para>Judged are the joints undone, integral ones aside, on the shortest route or the way that option <c>route</c> names:
/// from the closed device, or with option <c>from</c> only after the last removal of another part of the roles judged, as
/// Regulation (EU) 2023/1669 Annex IV point 5 asks. Moving a part away counts as its removal (Annex I (20)); parts replaced
/// with the judged one, or carried away by it, are not others. Where that work undoes no joint, nothing is lost, and it is
/// <c>reusable</c>.</para>
/// <para>Resupplied is derived from spares, see <see cref="FastenerLevels"/>. Unknown reuse leaves every level open. A
/// fastener that is <c>neither</c> has no level by default. With unknown tools the fewest and the most steps may lead two
/// ways; both count, none between. A part that only damage frees gets the lowest of the scale; a route that is unknown
/// leaves the answer unknown; one that was not proven shortest is judged as found.</para>
/// <para>Source: Regulation (EU) 2023/1669 Annex I (16) to (19) and Annex IV point 5. Thread safe.</para>
/// </remarks>
public sealed class FastenerReuseCriterion : IPartCriterion, IDesignAdvisor
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "fastener-reuse", 1, "Fastener reuse", "worst fastener undone for a part", "level",
        Direction.MoreIsBetter, "Regulation (EU) 2023/1669 Annex I (16) to (19) and Annex IV point 5",
        ["operations", "joints", "joints[].reuse", "joints[].integral", "parts[].on", "parts[].reach", "spares", "spares[].fastenersIncluded", "sequences"],
        FastenerReuseOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(PartContext context)
    {
        var facts = FastenerReuseFacts.Of(context);
        if (WayReasons.Barred(context, facts.Judged.Route) is { } barred) return barred;
        var points = facts.Works.Select(work => Worst.Of(
            work.Undone.Select(each => PointsOf(context, each)), PointsOf(context, FastenerLevel.Reusable)));
        return Outcome.Scored(Interval.HullOf(points)!.Value, [.. FastenerReuseReasons.Of(context, facts)]) with
        {
            Missing = [.. FastenerReuseReasons.Missing(context, facts)],
        };
    }

    /// <inheritdoc/>
    public IEnumerable<DesignChange> Suggest(DeviceContext context) => FastenerReuseChanges.Of(context);

    internal static Interval PointsOf(PartContext context, UndoneJoint each) => PointsOf(context, [.. each.Possible]);

    internal static Interval PointsOf(PartContext context, params IEnumerable<FastenerLevel> possible) =>
        context.Points(FastenerReuseOptions.Levels, possible.Select(Word.Of));
}
