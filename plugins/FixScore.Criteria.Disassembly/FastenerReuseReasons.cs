using FixScore.Disassembly;

namespace FixScore.Criteria.Disassembly;

/// <summary>What <see cref="FastenerReuseCriterion"/> says.</summary>
static class FastenerReuseReasons
{
    public static IEnumerable<Reason> Of(PartContext context, FastenerReuseFacts facts) =>
    [
        .. facts.Works.Select(each => WayReasons.Of(context, facts.Judged, each.Work)),
        .. WayReasons.Of(context, facts.Judged),
        .. facts.Undone.Select(each => Fastener(context, each)),
        .. facts.Works.Any(each => each.Undone.IsEmpty) ? [Nothing(context)] : Array.Empty<Reason>(),
    ];

    public static IEnumerable<Missing> Missing(PartContext context, FastenerReuseFacts facts)
    {
        foreach (var (joint, possible) in facts.Undone)
            if (!joint.Reuse.IsExact) yield return new(context.Case.At(joint), "reuse");
            else if (possible.Length > 1) yield return new(context.Case.At(context.Part), $"a spare for it, and whether {joint.Id} comes with it");
    }

    static Reason Fastener(PartContext context, UndoneJoint each) => Reason.Of(
        "fastener", "Fastener {joint}, undone for part {part}, is {level}.", [context.Case.At(each.Joint)],
        ("joint", each.Joint.Id), ("part", context.Part.Id), ("level", string.Join(" or ", each.Possible.Select(Word.Of))))
        with { Points = FastenerReuseCriterion.PointsOf(context, each) };

    static Reason Nothing(PartContext context) => Reason.Of(
        "nothing-undone", "No fastener is undone for part {part}, so that none is lost.", [context.Case.At(context.Part)], ("part", context.Part.Id))
        with { Points = FastenerReuseCriterion.PointsOf(context, FastenerLevel.Reusable) };
}
