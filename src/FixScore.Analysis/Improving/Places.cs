using System.Collections.Immutable;
using FixScore.Patching;

namespace FixScore.Analysis.Improving;

/// <summary>Which places of a record a change touches: whether it excludes another, and whether a criterion may notice.</summary>
/// <param name="touched">Pointers; the whole list where its entries move up or down.</param>
sealed class Places(ImmutableArray<string> touched)
{
    const string End = "/-";

    // What the kernel itself reads of a record, beside what criteria say they read.
    static readonly ImmutableArray<string> OfKernel = ["id", "device", "absent", "parts[].id", "parts[].role", "parts[].name"];

    public static Places Of(CandidateChange candidate) =>
        new([.. JsonPatch.Places(candidate.Change.JsonPatch).Select(place => place.Shifts ? Parent(place.At.Text) : place.At.Text).Distinct(StringComparer.Ordinal)]);

    /// <summary>Whether both touch one place, or one touches what holds the other's. Entries added at the end of a list are in nobody's way.</summary>
    public bool Exclude(Places other) => touched.Any(a => other.Touched.Any(b => Holds(a, b) && !(a == b && a.EndsWith(End, StringComparison.Ordinal)) || Holds(b, a) && a != b));

    /// <summary>Whether what a criterion reads may be touched.</summary>
    public bool MayMatterTo(CriterionInfo criterion) => touched.Any(place => criterion.Reads.Any(read => Overlap(Path(place), List(read))));

    /// <summary>Whether the kernel itself may notice.</summary>
    public bool MayMatterToKernel => touched.Any(place => OfKernel.Any(read => Overlap(Path(place), read)));

    ImmutableArray<string> Touched => touched;

    static bool Holds(string outer, string inner) => inner == outer || inner.StartsWith(outer + "/", StringComparison.Ordinal);

    static string Parent(string pointer) => pointer[..pointer.LastIndexOf('/')];

    // "/joints/3/screw/drive" is read as "joints[].screw.drive".
    static string Path(string pointer) => string.Join('.', pointer.Split('/').Skip(1).Select(step => step == "-" || step.All(char.IsAsciiDigit) ? "[]" : step))
        .Replace(".[]", "[]", StringComparison.Ordinal);

    // "observations/vendor.name": which of the entries cannot be told from a place.
    static string List(string read) => read.Split('/')[0];

    static bool Overlap(string a, string b) => a == b || IsBelow(a, b) || IsBelow(b, a);

    static bool IsBelow(string path, string above) =>
        path.StartsWith(above, StringComparison.Ordinal) && (above.Length == 0 || path[above.Length] is '.' or '[');
}
