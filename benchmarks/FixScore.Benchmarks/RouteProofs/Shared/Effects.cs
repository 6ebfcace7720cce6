using FixScore.Records;

namespace FixScore.Benchmarks.RouteProofs;

/// <summary>Which operations bring something about on the way to a part without damage; operations by place in the record.</summary>
sealed class Effects
{
    readonly TeardownRecord record;
    readonly PartGroups groups;
    readonly PartGroup target;

    public Effects(TeardownRecord record, string part)
    {
        this.record = record;
        groups = PartGroups.Of(record);
        target = groups.Of(part);
        Operations = record.Operations.AsArray();
        All = [.. Enumerable.Range(0, Operations.Count).Where(i => IsUsable(Operations[i]))];
        Removed = [.. Operations.Select(operation => Taken(operation.Removes))];
        Moved = [.. Operations.Select((operation, i) => Taken(operation.Moves).Except(Removed[i]).ToHashSet())];
    }

    public IReadOnlyList<Operation> Operations { get; }

    public int[] All { get; }

    /// <summary>Parts that leave with each operation, riders included.</summary>
    public HashSet<string>[] Removed { get; }

    /// <summary>Parts that each operation shifts aside, riders included.</summary>
    public HashSet<string>[] Moved { get; }

    public int[] Removing(string part) => [.. All.Where(i => Removed[i].Contains(part))];

    public int[] Shifting(string part) => [.. All.Where(i => Removed[i].Contains(part) || Moved[i].Contains(part))];

    public int[] Undoing(Joint joint) => joint.Integral ? [] : [.. All.Where(i => Operations[i].Undoes.Contains(joint.Id) || (joint.Kind == JointKind.Contact && Parts(joint, i)))];

    public int[] Removing(PartGroup group) => [.. All.Where(i => Operations[i].Removes.Any(group.Holds))];

    public Joint Joint(string id) => record.Joints.First(joint => joint.Id == id);

    /// <summary>What frees the target: for each demand, the operations of which one must be done.</summary>
    public IEnumerable<int[]> Goal()
    {
        var own = Taken(target.Parts.Select(part => part.Id));
        foreach (var joint in target.Joints.Where(joint => !joint.Joins.All(own.Contains))) yield return Undoing(joint);
        if (record.Operations.Any(operation => operation.Phase == OperationPhase.Disassembly && operation.Removes.Any(target.Holds))) yield return Removing(target);
    }

    /// <summary>Joints that an operation strains, each with a part that would stay.</summary>
    public IEnumerable<(Joint Joint, string Stays)> Strained(int operation) =>
        from joint in record.Joints
        where !joint.Integral && joint.Kind != JointKind.Contact && !Operations[operation].Undoes.Contains(joint.Id)
        from part in joint.Joins
        where (joint.Joins.Any(Removed[operation].Contains) && !Removed[operation].Contains(part))
            || (joint.Joins.Any(Moved[operation].Contains) && !Removed[operation].Contains(part) && !Moved[operation].Contains(part)
                && !Operations[operation].HoldsBy.Contains(joint.Id))
        select (joint, part);

    bool IsUsable(Operation operation) => operation.Phase == OperationPhase.Disassembly && operation.Damages.All(target.Holds);

    bool Parts(Joint joint, int operation) =>
        (joint.Joins.Any(Removed[operation].Contains) && !joint.Joins.All(Removed[operation].Contains))
        || (joint.Joins.Any(Moved[operation].Contains) && !joint.Joins.All(Moved[operation].Contains));

    HashSet<string> Taken(IEnumerable<string> named)
    {
        var taken = named.SelectMany(part => groups.Of(part).Parts).Select(part => part.Id).ToHashSet();
        while (record.Parts.Where(part => part.On is not null && taken.Contains(part.On) && !taken.Contains(part.Id)).ToArray() is { Length: > 0 } riders)
            taken.UnionWith(riders.SelectMany(rider => groups.Of(rider.Id).Parts).Select(part => part.Id));
        return taken;
    }
}
