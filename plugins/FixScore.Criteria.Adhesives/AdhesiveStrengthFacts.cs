using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Adhesives;

/// <summary>The bonds that hold a part.</summary>
/// <param name="Bonds">Adhesives and tapes between the part's group, with what rides on it, and other parts.</param>
/// <param name="IsDescribed">Whether the record says at all how the part is held.</param>
sealed record AdhesiveStrengthFacts(ImmutableArray<Bond> Bonds, bool IsDescribed)
{
    public static AdhesiveStrengthFacts Of(TeardownCase source, Part part)
    {
        var assembly = source.Derive<PartAssembly, string>(part.Id);
        var efforts = new OpeningEfforts(source.Record);
        var cells = source.Record.Parts.Where(IsCell).Select(each => each.Id).ToHashSet(StringComparer.Ordinal);
        return new(
            [.. assembly.Joints.Where(joint => joint.Kind is JointKind.Adhesive or JointKind.Tape).Select(
                joint => new Bond(joint, efforts.Undoing(joint), efforts.Of(joint), joint.Joins.Any(cells.Contains)))],
            assembly.IsDescribed);
    }

    static bool IsCell(Part part) => part.Role == Roles.Battery || part.Hazards.Contains(Hazard.LithiumCell);
}
