using System.Collections.Frozen;
using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Disassembly.Model;

/// <summary>How a device is put together, by number: groups of parts, what rides on what, joints.</summary>
sealed class Structure
{
    readonly FrozenDictionary<string, int> groupOf, jointOf;
    readonly ImmutableArray<int[]> sides;
    readonly ILookup<int, int> touching, riders;

    public Structure(TeardownRecord record, PartGroups groups)
    {
        (Record, Joints, Groups) = (record, record.Joints.AsArray(), groups.All);
        groupOf = Groups.SelectMany((group, index) => group.Parts.Select(part => (part.Id, index))).ToFrozenDictionary(pair => pair.Id, pair => pair.index, StringComparer.Ordinal);
        jointOf = Joints.Select((joint, index) => (joint.Id, index)).ToFrozenDictionary(pair => pair.Id, pair => pair.index, StringComparer.Ordinal);
        sides = [.. Joints.Select(joint => joint.Joins.Select(GroupOf).Distinct().ToArray())];
        touching = sides.SelectMany((sides, joint) => sides.Select(group => (group, joint))).ToLookup(pair => pair.group, pair => pair.joint);
        riders = record.Parts.Where(part => part.On is not null).ToLookup(part => GroupOf(part.On!), part => GroupOf(part.Id));
    }

    public TeardownRecord Record { get; }

    public ImmutableArray<Joint> Joints { get; }

    public ImmutableArray<PartGroup> Groups { get; }

    public int GroupOf(string part) => groupOf[part];

    public bool IsPart(string id) => groupOf.ContainsKey(id);

    public int JointOf(string joint) => jointOf[joint];

    /// <summary>The groups a joint holds together.</summary>
    public int[] Sides(int joint) => sides[joint];

    public IEnumerable<int> GroupsOf(IEnumerable<string> parts) => parts.Select(GroupOf).Distinct();

    /// <summary>The groups of these parts and all that rides on them.</summary>
    public int[] Along(params IEnumerable<string> parts) => Along(GroupsOf(parts));

    /// <summary>These groups and all that rides on them, rising.</summary>
    public int[] Along(IEnumerable<int> groups)
    {
        var (all, open) = (new HashSet<int>(groups), new Stack<int>(groups));
        while (open.TryPop(out var next))
            foreach (var rider in riders[next].Where(all.Add)) open.Push(rider);
        return [.. all.Order()];
    }

    /// <summary>The groups an operation moves and all that rides on them, without those that it removes.</summary>
    public int[] Moved(Operation operation) => [.. Along(operation.Moves).Except(Along(operation.Removes))];

    /// <summary>Joints the operation undoes; integral ones are not meant to be undone and are left out.</summary>
    public IEnumerable<int> Undone(Operation operation) => operation.Undoes.Select(JointOf).Where(joint => !Joints[joint].Integral).Distinct();

    /// <summary>Joints between one of these groups and one that is not among them, rising.</summary>
    public int[] Crossing(int[] inside)
    {
        var held = inside.ToHashSet();
        return [.. inside.SelectMany(group => touching[group]).Distinct().Where(joint => !Joints[joint].Integral && !Array.TrueForAll(sides[joint], held.Contains)).Order()];
    }
}
