using System.Collections.Immutable;
using System.Text.Json.Nodes;
using FixScore.Records;

namespace FixScore.Criteria.Disassembly;

/// <summary>The work that concerns one part and no other: what undoes its joints, takes it out, or comes directly before that.</summary>
/// <param name="Source">The case.</param>
/// <param name="Part">The part.</param>
/// <param name="Joints">Joints between its group, with what rides on it, and the rest.</param>
/// <param name="Operations">The operations, in the order of the record.</param>
sealed record OwnWork(TeardownCase Source, Part Part, ImmutableArray<Joint> Joints, ImmutableArray<Operation> Operations)
{
    /// <summary>The own work of a part; <c>null</c> where others share in it, so that it cannot be told apart.</summary>
    public static OwnWork? Of(TeardownCase source, Part part)
    {
        var (record, group) = (source.Record, source.Derive<PartGroups>().Of(part.Id));
        if (!record.Joints.IsRecorded || source.Derive<PartAssembly, string>(part.Id).Joints is not { IsEmpty: false } joints) return null;
        bool IsOwnJoint(string id) => joints.Any(joint => joint.Id == id);
        Operation[] touching = [.. record.Operations.Where(operation => operation.Phase == OperationPhase.Disassembly
            && (operation.Undoes.Any(IsOwnJoint) || operation.Removes.Concat(operation.Moves).Any(group.Holds)))];
        if (!touching.All(operation => operation.Undoes.All(IsOwnJoint) && operation.Removes.Concat(operation.Moves).All(group.Holds))) return null;
        var before = record.Operations.Where(operation => touching.Any(each => each.DirectlyAfter == operation.Id)).Except(touching).ToArray();
        if (before.Any(operation => operation.DirectlyAfter is not null || !operation.Undoes.IsEmpty || !operation.Removes.IsEmpty)) return null;
        return touching.Length == 0 ? null : new(source, part, joints, [.. record.Operations.Where(each => touching.Contains(each) || before.Contains(each))]);
    }

    /// <summary>A patch by which nothing lies before the part; <c>null</c> where nothing does. Its recorded ways keep what concerns it.</summary>
    public DesignChange? ReachedFirst()
    {
        var patch = Joints.Where(joint => !joint.Under.IsEmpty).Aggregate(DesignPatch.Empty, (all, joint) => all.Remove(Source.At(joint), "under"));
        foreach (var operation in Operations.Where(operation => operation.After.Any(item => !IsOwn(item))))
            patch = patch.Set(Source.At(operation), "after", new JsonArray([.. operation.After.Where(IsOwn).Select(Written)]));
        if (patch.IsEmpty) return null;
        foreach (var sequence in Source.Record.Sequences.Where(sequence => sequence.Part == Part.Id))
            if (sequence.Operations.Where(id => Operations.Any(operation => operation.Id == id)).ToArray() is { Length: > 0 } kept)
                patch = patch.Set(Source.At(sequence), "operations", DesignPatch.Words(kept));
        return patch.As($"reach-{Part.Id}-first", Reason.Of(
            "reach-first", "Let {part} be reached first: nothing lies before its {joints} joints.", [Source.At(Part), .. Joints.Select(Source.At)],
            ("part", Part.Id), ("joints", Joints.Length)));
    }

    // What must be done first on the part itself stays: unplug, then lift.
    bool IsOwn(Condition item) => item switch
    {
        Condition.Done done => Operations.Any(operation => operation.Id == done.Id),
        Condition.Undone undone => Joints.Any(joint => joint.Id == undone.Joint),
        _ => false,
    };

    static JsonNode Written(Condition item) => item is Condition.Undone undone ? new JsonObject { ["undone"] = undone.Joint } : ((Condition.Done)item).Id;
}
