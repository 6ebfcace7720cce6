using FixScore.Records;

namespace FixScore.Disassembly.Tests.Oracle;

/// <summary>What a record says about parts and joints, as bit masks: groups, riders, and which parts a joint holds.</summary>
sealed class Sides
{
    readonly Part[] parts;
    readonly Joint[] joints;
    readonly int[] groups;

    public Sides(TeardownRecord record)
    {
        parts = [.. record.Parts];
        joints = [.. record.Joints];
        Joins = [.. joints.Select(joint => Parts(joint.Joins))];
        Under = [.. joints.Select(joint => Parts(joint.Under))];
        Integral = joints.MaskOf(joint => joint.Integral);
        Contact = joints.MaskOf(joint => joint.Kind == JointKind.Contact);
        groups = [.. parts.Select((_, part) => Tied(1 << part))];
        Carrier = [.. parts.Select(part => part.On is null ? 0 : Parts([part.On]))];
    }

    /// <summary>The parts that each joint holds.</summary>
    public int[] Joins { get; }

    /// <summary>The parts that must be away before each joint can be reached.</summary>
    public int[] Under { get; }

    /// <summary>What each part rides on.</summary>
    public int[] Carrier { get; }

    public int Integral { get; }

    public int Contact { get; }

    public int AllParts => (1 << parts.Length) - 1;

    public int Parts(IEnumerable<string> ids) => parts.MaskOf(part => ids.Contains(part.Id));

    public int Joints(IEnumerable<string> ids) => joints.MaskOf(joint => ids.Contains(joint.Id));

    public int Group(string part) => groups[Array.FindIndex(parts, each => each.Id == part)];

    /// <summary>Whole groups of these parts: naming one part of a group names all.</summary>
    public int Groups(int set) => Enumerable.Range(0, parts.Length).Where(part => set.Has(part)).Aggregate(0, (all, part) => all | groups[part]);

    /// <summary>These groups, and the groups of what rides on them.</summary>
    public int WithRiders(int set)
    {
        for (var part = 0; part < parts.Length; part++)
            if (Carrier[part].Meets(set) && !set.Has(part)) return WithRiders(set | groups[part]);
        return set;
    }

    // Joints inside a group are held to the end, whether or not they are what makes it one.
    int Tied(int set)
    {
        for (var joint = 0; joint < joints.Length; joint++)
            if (Integral.Has(joint) && Joins[joint].Meets(set) && !set.Holds(Joins[joint])) return Tied(set | Joins[joint]);
        return set;
    }
}
