using System.Collections.Immutable;

namespace FixScore.Reporting.Pictures;

/// <summary>In which order joints leave a box, and how far apart: ends with a word need more room.</summary>
/// <remarks>The word stands at the part that the fewest joints hold, so that no box gets higher than it must. Upward ends first, the nearest on top; then downward ends, the farthest on top. So lines of one box do not cross each other.</remarks>
sealed class PortPlan
{
    const int Edge = 4;

    readonly ILookup<string, Port> ports;
    readonly ImmutableArray<string> worded;

    public PortPlan(ImmutableArray<PictureJoint> joints, Dictionary<string, int> rows)
    {
        var held = joints.SelectMany(joint => joint.Parts).CountBy(part => part, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        worded = [.. joints.Select(joint => joint.Parts.OrderBy(part => held[part]).ThenByDescending(part => rows[part]).First())];
        ports = joints.SelectMany((joint, index) => Ends(joint, index, rows, worded[index]))
            .OrderBy(port => port.IsDown).ThenByDescending(port => port.Farthest).ThenBy(port => port.Index)
            .ToLookup(port => port.Part, StringComparer.Ordinal);
    }

    public int Height(PicturePart part) => 2 * Edge + ports[part.Part.Id].Sum(port => port.Height) + (part.LooseJoints > 0 ? Measures.WordedPort : 0);

    /// <summary>Heights at which a joint leaves its parts, downwards.</summary>
    public ImmutableArray<int> EndsOf(PictureJoint joint, IReadOnlyDictionary<string, PlacedPart> places) =>
        [.. joint.Parts.Select(part => EndAt(joint, places[part])).Order()];

    /// <summary>Height of the end that has the word.</summary>
    public int WordAt(PictureJoint joint, int index, IReadOnlyDictionary<string, PlacedPart> places) => EndAt(joint, places[worded[index]]);

    /// <summary>Where counted joints are told: below all ends.</summary>
    public int CountAt(PlacedPart part) => part.Top + Edge + ports[part.Drawn.Part.Id].Sum(port => port.Height) + Measures.WordedPort - 3;

    int EndAt(PictureJoint joint, PlacedPart part)
    {
        var y = part.Top + Edge;
        foreach (var port in ports[part.Drawn.Part.Id])
        {
            y += port.Height;
            if (ReferenceEquals(port.Joint, joint)) return y - 3;
        }
        throw new ArgumentException("The joint does not hold this part.", nameof(joint));
    }

    static IEnumerable<Port> Ends(PictureJoint joint, int index, Dictionary<string, int> rows, string worded)
    {
        var ends = joint.Parts.Select(part => (Part: part, Row: rows[part])).OrderBy(end => end.Row).ToArray();
        return ends.Select((end, at) => new Port(end.Part, index, joint, at == 0, at == 0 ? ends[^1].Row : ends[0].Row, end.Part == worded));
    }

    sealed record Port(string Part, int Index, PictureJoint Joint, bool IsDown, int Farthest, bool IsWorded)
    {
        public int Height => IsWorded ? Measures.WordedPort : Measures.BarePort;
    }
}
