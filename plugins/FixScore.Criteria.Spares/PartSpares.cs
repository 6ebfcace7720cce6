using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Spares;

/// <summary>The spares that serve a part: those listed for it or for a part of its group, which is replaced as a whole.</summary>
/// <param name="Part">The part.</param>
/// <param name="Listed">The spares, in the order of the record.</param>
/// <param name="Possible">Without recorded joints any two parts may form a group: all other spares.</param>
/// <param name="IsNone">Whether the record says that there are no spares at all.</param>
sealed record PartSpares(Part Part, ImmutableArray<Spare> Listed, ImmutableArray<Spare> Possible, bool IsNone)
{
    /// <summary>Whether nothing is known: no list, or one with entries and none of them for the part.</summary>
    public bool IsUnknown => Listed.IsEmpty && !IsNone;

    public static PartSpares Of(TeardownCase source, Part part)
    {
        var (record, group) = (source.Record, source.Derive<PartGroups>().Of(part.Id));
        return new(
            part,
            [.. record.Spares.Where(spare => group.Holds(spare.Part))],
            record.Joints.IsRecorded ? [] : [.. record.Spares.Where(spare => !group.Holds(spare.Part))],
            record.Spares is { IsRecorded: true, Count: 0 });
    }

    /// <summary>The best spare counts: the low end is the best that is sure, the high end the best that is possible.</summary>
    public Interval Best(Func<Spare, Interval> judge) =>
        new(Listed.Max(spare => judge(spare).Low), Listed.Concat(Possible).Max(spare => judge(spare).High));
}
