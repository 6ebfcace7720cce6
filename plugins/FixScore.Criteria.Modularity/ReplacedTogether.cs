using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Modularity;

/// <summary>Other parts, inert ones aside, that are replaced when a part is.</summary>
/// <param name="Others">Those known, in the order of the record.</param>
/// <param name="IntegralJoints">The joints that are never meant to be undone.</param>
/// <param name="Bundle">The spare that is only sold with others, where that adds to them.</param>
/// <param name="Count">How many there can be.</param>
sealed record ReplacedTogether(ImmutableArray<Part> Others, ImmutableArray<Joint> IntegralJoints, Spare? Bundle, Interval Count)
{
    public static ReplacedTogether Of(TeardownCase source, Part part, bool bundles)
    {
        var (record, groups) = (source.Record, source.Derive<PartGroups>());
        var group = groups.Of(part.Id);
        ImmutableArray<Spare> spares = bundles ? [.. record.Spares.Where(spare => group.Holds(spare.Part))] : [];
        var (bundle, others) = spares.Prepend(null).Select(spare => (Spare: spare, Others: With(spare)))
            .Skip(spares.IsEmpty ? 0 : 1).MinBy(each => each.Others.Length);
        var isKnown = !bundles || !spares.IsEmpty || record.Spares is { IsRecorded: true, Count: 0 };
        return new(
            others, group.IntegralJoints, others.Length > With(null).Length ? bundle : null,
            isKnown ? others.Length : new Interval(others.Length, record.Parts.Count(IsOther)));

        bool IsOther(Part other) => other.Id != part.Id && !other.Inert;

        ImmutableArray<Part> With(Spare? spare) =>
        [
            .. record.Parts.Where(other => IsOther(other)
                && (group.Holds(other.Id) || spare?.OnlyBundledWith.Any(groups.Of(other.Id).Holds) == true)),
        ];
    }
}
