using System.Collections.Frozen;
using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore;

/// <summary>Parts that are replaced together because joints between them are never meant to be undone.</summary>
/// <param name="Parts">The parts, in the order of the record; one at least.</param>
/// <param name="Joints">The joints that hold the group to other parts, in the order of the record; those inside it are not listed.</param>
/// <param name="IntegralJoints">The joints that make the group, in the order of the record; empty for a single part.</param>
public sealed record PartGroup(ImmutableArray<Part> Parts, ImmutableArray<Joint> Joints, ImmutableArray<Joint> IntegralJoints)
{
    /// <summary>Whether the part with this id belongs to the group.</summary>
    public bool Holds(string partId) => Parts.Any(part => part.Id == partId);
}

/// <summary>All groups of a record: parts tied by <see cref="Joint.Integral"/> joints, directly or through others.</summary>
public sealed class PartGroups : IFact<PartGroups>
{
    readonly FrozenDictionary<string, PartGroup> byPart;

    PartGroups(ImmutableArray<PartGroup> all)
    {
        All = all;
        byPart = all.SelectMany(group => group.Parts, (group, part) => (part.Id, Group: group)).DistinctBy(pair => pair.Id, StringComparer.Ordinal)
            .ToFrozenDictionary(pair => pair.Id, pair => pair.Group, StringComparer.Ordinal);
    }

    /// <summary>The groups, ordered by their first part in the record. A part that is tied to no other is a group of one.</summary>
    public ImmutableArray<PartGroup> All { get; }

    /// <summary>The group that holds a part.</summary>
    /// <exception cref="KeyNotFoundException">No part of the record has this id.</exception>
    public PartGroup Of(string partId) => byPart[partId];

    /// <inheritdoc/>
    public static PartGroups From(TeardownCase source, CancellationToken cancellation) => Of(source.Record);

    /// <summary>The groups of a record. Ids that stand twice or name no part are left out, so that checks can go on over them.</summary>
    public static PartGroups Of(TeardownRecord record)
    {
        var leader = record.Parts.DistinctBy(part => part.Id, StringComparer.Ordinal).ToDictionary(part => part.Id, part => part.Id, StringComparer.Ordinal);
        foreach (var joint in record.Joints.Where(joint => joint.Integral)) Unite(leader, [.. joint.Joins.Where(leader.ContainsKey)]);
        var touching = JointsByPart(record);
        return new([.. record.Parts.GroupBy(part => Find(leader, part.Id)).Select(parts => Group([.. parts], touching))]);
    }

    static ILookup<string, (Joint Joint, int Index)> JointsByPart(TeardownRecord record) =>
        record.Joints.Select((joint, index) => (joint, index))
            .SelectMany(entry => entry.joint.Joins, (entry, part) => (part, entry))
            .ToLookup(pair => pair.part, pair => pair.entry, StringComparer.Ordinal);

    static PartGroup Group(ImmutableArray<Part> parts, ILookup<string, (Joint Joint, int Index)> touching)
    {
        var ids = parts.Select(part => part.Id).ToHashSet(StringComparer.Ordinal);
        Joint[] joints = [.. ids.SelectMany(id => touching[id]).DistinctBy(entry => entry.Index).OrderBy(entry => entry.Index).Select(entry => entry.Joint)];
        return new(parts, [.. joints.Where(joint => !joint.Joins.All(ids.Contains))], [.. joints.Where(joint => joint.Integral)]);
    }

    static void Unite(Dictionary<string, string> leader, ImmutableArray<string> parts)
    {
        foreach (var part in parts) leader[Find(leader, part)] = Find(leader, parts[0]);
    }

    static string Find(Dictionary<string, string> leader, string part)
    {
        while (leader[part] != part) part = leader[part] = leader[leader[part]];
        return part;
    }
}
