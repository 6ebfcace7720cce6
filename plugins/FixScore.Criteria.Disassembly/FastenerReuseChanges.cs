using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Disassembly;

/// <summary>Design changes for <see cref="FastenerReuseCriterion"/>: fasteners that come with the spare, and clips instead of a bond.</summary>
static class FastenerReuseChanges
{
    public static IEnumerable<DesignChange> Of(DeviceContext context)
    {
        (Part Part, ImmutableArray<UndoneJoint> Lost)[] judged = [.. context.JudgedParts.Select(part => (part, LostFor(context, part)))];
        return
        [
            .. judged.Select(each => Include(context.Case, each.Part, each.Lost)).OfType<DesignChange>(),
            .. judged.SelectMany(each => each.Lost).DistinctBy(each => each.Joint.Id, StringComparer.Ordinal)
                .Select(each => Clip(context.Case, each.Joint)).OfType<DesignChange>(),
        ];
    }

    // Fasteners that are undone on the judged way and may not be used again.
    static ImmutableArray<UndoneJoint> LostFor(DeviceContext context, Part part)
    {
        var asked = context.For(part);
        if (WayReasons.Barred(asked, JudgedWays.Of(asked).Route) is not null) return [];
        return [.. FastenerReuseFacts.Of(asked).Undone.Where(each => each.Possible is not [FastenerLevel.Reusable])];
    }

    static DesignChange? Include(TeardownCase source, Part part, ImmutableArray<UndoneJoint> lost)
    {
        var group = source.Derive<PartGroups>().Of(part.Id);
        var included = lost.Where(each => each.Joint.Reuse.MayBe(Reuse.Removable) && each.Possible is not [FastenerLevel.Resupplied]).Select(each => each.Joint.Id).ToArray();
        if (included.Length == 0 || source.Record.Spares.FirstOrDefault(spare => group.Holds(spare.Part)) is not { } offered) return null;
        var now = offered.FastenersIncluded switch
        {
            { All: true } => group.Joints.Select(joint => joint.Id),
            { } some => some.Joints,
            null => [],
        };
        return DesignPatch.Empty.Set(source.At(offered), "fastenersIncluded", DesignPatch.Words(now.Union(included, StringComparer.Ordinal)))
            .As($"fasteners-with-{part.Id}", Reason.Of(
                "fasteners-with-spare", "Deliver new {joints} with the spare for {part}.", [source.At(offered)],
                ("joints", string.Join(", ", included)), ("part", part.Id)));
    }

    static DesignChange? Clip(TeardownCase source, Joint joint)
    {
        if (joint.Integral || joint.Kind is not (JointKind.Adhesive or JointKind.Tape) || SoleOperation.Undoing(source.Record, joint.Id) is not { } operation) return null;
        var at = source.At(joint);
        var patch = DesignPatch.Empty.Set(at, "kind", Word.Of(JointKind.SnapFit)).Set(at, "reuse", Word.Of(Reuse.Reusable));
        if (joint.Adhesive is not null) patch = patch.Remove(at, "adhesive");
        return patch.Then(SoleOperation.ByHand(source, operation, OperationAction.Unclip)).As($"clip-{joint.Id}", Reason.Of(
            "clip", "Clip instead of glue at {joint}, opened by hand in {operation}.", [at, source.At(operation)],
            ("joint", joint.Id), ("operation", operation.Id)));
    }
}
