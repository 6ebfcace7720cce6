using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Reporting.Reports;

/// <summary>Screws of one drive, thread and length, wherever they sit.</summary>
/// <param name="Mark">A short name for the compartment, such as <c>S1</c>.</param>
/// <param name="Screw">The type; <c>null</c> when nothing of it is recorded.</param>
/// <param name="Joints">The joints, in the order of the record.</param>
sealed record ScrewKind(string Mark, Screw? Screw, ImmutableArray<Joint> Joints)
{
    /// <summary>How many there are in all; an end that some joint leaves open is open.</summary>
    public Quantity Count => Joints.Aggregate((Quantity)0, (sum, joint) => new(sum.Min + joint.Count.Min, sum.Max + joint.Count.Max));

    /// <summary>Whether a screw of the other kind fits the thread and can be taken for one of these.</summary>
    public bool IsEasilyMixedWith(ScrewKind other) =>
        this != other && Screw is { } a && other.Screw is { } b && !a.Drive.IsUnknown && a.Drive == b.Drive && a.DiameterMm != default && a.DiameterMm == b.DiameterMm;

    /// <summary>Whether its own length is one number; if not, even its own screws are not known to be alike.</summary>
    public bool HasLength => Screw?.LengthMm.IsExact ?? false;

    public static ImmutableArray<ScrewKind> Of(TeardownRecord record) =>
        [.. record.Joints.Where(joint => joint.Kind == JointKind.Screw).GroupBy(joint => joint.Screw)
            .Select((alike, index) => new ScrewKind(FormattableString.Invariant($"S{index + 1}"), alike.Key, [.. alike]))];
}
