using System.Collections.Immutable;
using FixScore.Records;
using FixScore.Reporting.Sheet;

namespace FixScore.Reporting.Pictures;

/// <summary>Joints as lines: one each, or where parts are folded, one for all of a kind between the same parts.</summary>
sealed class DrawnJoints
{
    /// <summary>The most lines that are drawn; of more, the rest is counted at its parts.</summary>
    const int Most = 160;

    readonly ImmutableArray<Joint> counted;

    public DrawnJoints(TeardownRecord record, ImmutableArray<Part> parts, RecordTerms terms)
    {
        var drawn = parts.Select(part => part.Id).ToHashSet(StringComparer.Ordinal);
        var folds = record.Parts.Count > parts.Length;
        var lines = record.Joints
            .GroupBy(joint => (Ends: string.Join(' ', Ends(joint, drawn).Order(StringComparer.Ordinal)), joint.Kind, joint.Integral, Only: folds ? "" : joint.Id))
            .Where(group => Ends(group.First(), drawn).Length > 1).ToArray();
        Lines = [.. lines.Take(Most).Select(group => Line([.. group], drawn, terms))];
        var shown = Lines.SelectMany(line => line.Ids).ToHashSet(StringComparer.Ordinal);
        counted = [.. record.Joints.Where(joint => !shown.Contains(joint.Id))];
    }

    public ImmutableArray<PictureJoint> Lines { get; }

    /// <summary>How many joints are only counted.</summary>
    public int Counted => counted.Length;

    public int CountedAt(string part) => counted.Count(joint => joint.Joins.Contains(part));

    static PictureJoint Line(ImmutableArray<Joint> joints, HashSet<string> drawn, RecordTerms terms) =>
        new(Words(joints, terms), [.. joints.Select(joint => joint.Id)], JointForms.Of(joints[0].Kind), Ends(joints[0], drawn));

    static string Words(ImmutableArray<Joint> joints, RecordTerms terms)
    {
        var words = joints.Length == 1 ? terms.JointWords(joints[0]) : $"{terms.Number(joints.Length)} joints: {RecordTerms.Plainly(joints[0].Kind)}";
        return joints[0].Integral ? words + ", for good" : words;
    }

    static ImmutableArray<string> Ends(Joint joint, HashSet<string> drawn) => [.. joint.Joins.Where(drawn.Contains).Distinct(StringComparer.Ordinal)];
}
