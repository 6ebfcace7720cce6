using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore;

/// <summary>A part's group with all that rides on it and comes along when it is taken out.</summary>
/// <param name="Joints">The joints that hold it to other parts, in the order of the record.</param>
/// <param name="IsDescribed">Whether any joint or operation says how the group is held; if not, nothing is known of it.</param>
public sealed record PartAssembly(ImmutableArray<Joint> Joints, bool IsDescribed) : IFact<PartAssembly, string>
{
    /// <summary>The assembly of the part with the id <paramref name="key"/>.</summary>
    /// <exception cref="KeyNotFoundException">No part of the record has this id.</exception>
    public static PartAssembly From(TeardownCase source, string key, CancellationToken cancellation)
    {
        var (record, groups) = (source.Record, source.Derive<PartGroups>());
        var group = groups.Of(key);
        var held = group.Parts.Select(each => each.Id).ToHashSet(StringComparer.Ordinal);
        while (record.Parts.Where(each => each.On is not null && held.Contains(each.On) && !held.Contains(each.Id)).ToArray() is { Length: > 0 } riders)
            held.UnionWith(riders.SelectMany(rider => groups.Of(rider.Id).Parts).Select(each => each.Id));
        ImmutableArray<Joint> joints = [.. record.Joints.Where(joint => joint.Joins.Any(held.Contains) && !joint.Joins.All(held.Contains))];
        return new(joints, !joints.IsEmpty || !group.Joints.IsEmpty
            || record.Operations.Any(operation => operation.Removes.Concat(operation.Moves).Any(group.Holds)));
    }
}
