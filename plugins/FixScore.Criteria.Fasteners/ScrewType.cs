using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Fasteners;

/// <summary>Screws that are known to be alike: all joints of one exact type, or a single joint whose type is left open.</summary>
/// <param name="Look">Drive, diameter and length as far as observed.</param>
/// <param name="Least">The fewest there can be.</param>
/// <param name="Most">The most there can be; <c>null</c> without limit.</param>
/// <param name="Joints">The joints they are recorded in, in the order of the record.</param>
sealed record ScrewType(Screw Look, decimal Least, decimal? Most, ImmutableArray<Joint> Joints)
{
    static readonly Screw Unseen = new(default, default, default);

    public bool IsExact => Exact(Look);

    public static IEnumerable<ScrewType> Of(IEnumerable<Joint> screws) =>
        screws.GroupBy(Key).Select(alike => Of([.. alike])).Where(type => type.Most != 0);

    /// <summary>Whether both can be one and the same type.</summary>
    public bool MayEqual(ScrewType other) =>
        (Look.Drive.IsUnknown || other.Look.Drive.IsUnknown || Look.Drive.Stated.Any(other.Look.Drive.MayBe))
        && Overlap(Look.DiameterMm, other.Look.DiameterMm)
        && Overlap(Look.LengthMm, other.Look.LengthMm);

    static ScrewType Of(ImmutableArray<Joint> joints) => new(
        joints[0].Screw ?? Unseen,
        joints.Sum(joint => joint.Count.Min ?? 0),
        joints.Any(joint => joint.Count.Max is null) ? null : joints.Sum(joint => joint.Count.Max),
        joints);

    // An open type is told from all others by its joint.
    static (string Drive, decimal? Diameter, decimal? Length, string? Joint) Key(Joint joint) => joint.Screw is { } screw && Exact(screw)
        ? (screw.Drive.Stated[0], screw.DiameterMm.Min, screw.LengthMm.Min, null)
        : ("", null, null, joint.Id);

    static bool Exact(Screw screw) => screw.Drive.IsExact && screw.DiameterMm.IsExact && screw.LengthMm.IsExact;

    static bool Overlap(Quantity a, Quantity b) => !(a.Max < b.Min) && !(b.Max < a.Min);
}
