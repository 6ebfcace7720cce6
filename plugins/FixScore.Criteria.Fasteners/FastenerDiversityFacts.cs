using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Fasteners;

/// <summary>The types of screw that a device's recorded joints hold.</summary>
/// <param name="Types">The types, in the order of the record; empty when no joint is a screw.</param>
/// <param name="Effective">Effective number of types, where there is a screw at all; 1 or more.</param>
/// <param name="MayBeNone">Whether every count may be 0.</param>
sealed record FastenerDiversityFacts(ImmutableArray<ScrewType> Types, Interval Effective, bool MayBeNone)
{
    public static FastenerDiversityFacts Of(TeardownRecord record)
    {
        ImmutableArray<ScrewType> types =
            [.. ScrewType.Of(record.Joints.Where(joint => joint.Kind == JointKind.Screw && !joint.Integral))];
        return types.IsEmpty
            ? new(types, 0m, true)
            : new(types, EffectiveTypes.Of(types), types.All(type => type.Least == 0));
    }

    /// <summary>Every drive stated, once, with the joints that state it.</summary>
    public IEnumerable<(string Drive, ImmutableArray<Joint> Joints)> Drives() =>
        from joint in Types.SelectMany(type => type.Joints)
        from drive in joint.Screw?.Drive.Stated ?? []
        group joint by drive into stated
        orderby stated.Key, StringComparer.Ordinal
        select (stated.Key, stated.ToImmutableArray());

    /// <summary>Types that agree in drive and diameter but not in length, set by set.</summary>
    public IEnumerable<ImmutableArray<ScrewType>> AlikeButForLength() =>
        from type in Types
        where type.IsExact
        group type by (type.Look.Drive.Stated[0], type.Look.DiameterMm) into alike
        where alike.Count() > 1
        select alike.ToImmutableArray();
}
