using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

static class JointMembers
{
    static readonly Place<Joint> Joints = RecordRoot.Place.Each("joints", r => r.Joints, (r, joints) => r with { Joints = joints });

    static readonly Place<Screw> Screw = Joints.One("screw", j => j.Screw, (j, screw) => j with { Screw = screw });

    static readonly Place<Adhesive> Adhesive = Joints.One("adhesive", j => j.Adhesive, (j, adhesive) => j with { Adhesive = adhesive });

    static readonly Place<Connector> Connector = Joints.One("connector", j => j.Connector, (j, connector) => j with { Connector = connector });

    public static ImmutableArray<Member> All =>
    [
        RecordRoot.Place.Open("joints", WithoutJoints), Joints.Itself,
        Joints.Known("id"), Joints.Known("joins"), Joints.Known("kind"), Joints.Known("count"), Joints.Known("integral"), Joints.Known("under"),
        Joints.Known("where", j => j.Where is not null),
        Joints.Open("reuse", j => j with { Reuse = default }),
        Joints.Open("hidden", j => j with { Hidden = null }),
        Joints.Open("screw", j => j with { Screw = null }),
        Screw.Open("drive", s => s with { Drive = default }),
        Screw.Open("diameterMm", s => s with { DiameterMm = Any }),
        Screw.Open("lengthMm", s => s with { LengthMm = Any }),
        Joints.Open("adhesive", j => j with { Adhesive = null }),
        Adhesive.Open("type", a => a with { Type = default }),
        Adhesive.Open("peelNPer25Mm", a => a with { PeelNPer25Mm = null }),
        Adhesive.Open("shearMPa", a => a with { ShearMPa = null }),
        Adhesive.Open("widthMm", a => a with { WidthMm = null }),
        Adhesive.Open("areaMm2", a => a with { AreaMm2 = null }),
        Adhesive.Open("softensAtC", a => a with { SoftensAtC = null }),
        Joints.Open("connector", j => j with { Connector = null }),
        Connector.Open("type", c => c with { Type = default }),
    ];

    // A screw always has a diameter and a length: the widest range the format can write stands for "unknown".
    static Quantity Any => new(0, null);

    // What names a joint goes with it, else its id would dangle.
    static TeardownRecord WithoutJoints(TeardownRecord record) => !record.Joints.IsRecorded ? record : OperationMembers.WithoutOperations(record) with
    {
        Joints = default,
        Spares = !record.Spares.IsRecorded ? default : [.. record.Spares.Select(spare => spare with { FastenersIncluded = null })],
        Findings = default,
    };
}
