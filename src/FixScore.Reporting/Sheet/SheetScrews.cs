using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Reporting.Sheet;

/// <summary>Screws that come out, and which of them look alike.</summary>
static class SheetScrews
{
    public static ImmutableArray<SheetScrew> Of(ImmutableArray<SheetOperation> operations, Func<SheetOperation, IEnumerable<Joint>> joints)
    {
        var all = operations.SelectMany(each => joints(each).Where(joint => joint.Kind == JointKind.Screw).Select(joint => (each.Number, Joint: joint))).DistinctBy(each => each.Joint.Id).ToArray();
        return [.. all.Select(each => new SheetScrew(each.Number, each.Joint, [.. all.Select(other => other.Joint).Where(other => AreEasilyMixed(each.Joint, other)).Select(other => other.Id)]))];
    }

    public static ImmutableArray<SheetBit> Bits(ImmutableArray<SheetScrew> screws) =>
        [.. screws.Select(each => each.Joint).Where(joint => joint.Screw is not null).GroupBy(joint => (joint.Screw!.Drive, joint.Screw.DiameterMm))
            .Select(alike => new SheetBit(alike.Key.Drive, alike.Key.DiameterMm, [.. alike.Select(joint => joint.Id)]))];

    // A length with open ends or a range may be another one: what is not known to be equal is kept apart.
    static bool AreEasilyMixed(Joint one, Joint other) =>
        one.Id != other.Id && one.Screw is { } a && other.Screw is { } b && a.Drive == b.Drive && a.DiameterMm == b.DiameterMm
        && !(a.LengthMm == b.LengthMm && a.LengthMm.IsExact);
}
