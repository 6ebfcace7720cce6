using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

static class GeneratedJoints
{
    static readonly ImmutableArray<string> Drives = ["cross-recess", "hexalobular", "hexagon-socket", "slotted", "tamper-pin"];

    public static void Add(RecordBuilder to, Plan plan, Dice dice)
    {
        for (var i = 1; i < plan.Parts.Length; i++)
        {
            var part = plan.Parts[i];
            var count = part.Integral ? 1 : dice.Between(0, 3);
            for (var number = 1; number <= count; number++) Add(to, $"{part.Role}-joint-{number}", part, plan.Above(i), dice);
        }
    }

    static void Add(RecordBuilder to, string id, PlannedPart part, ImmutableArray<string> above, Dice dice)
    {
        ImmutableArray<string> joins = [part.Role, part.Carrier!];
        Joint Described(Joint joint) => joint with
        {
            Integral = part.Integral,
            Reuse = dice.Word<Reuse>(),
            Hidden = dice.Flag(),
            Under = dice.Some(above, 25),
        };
        switch (dice.Between(1, 4))
        {
            case 1: to.Screw(id, joins, Drive(dice), dice.Certain(1, 4), dice.Certain(2, 12), dice.Between(1, 9), Described); break;
            case 2: to.Bond(id, joins, dice.Word<AdhesiveType>(), joint => Described(Measured(joint, dice))); break;
            case 3: to.Plug(id, joins, dice.Word<ConnectorType>(), Described); break;
            default: to.Joint(id, joins, dice.Exactly<JointKind>(), joint => Described(joint) with { Count = dice.Whole(1, 6) }); break;
        }
    }

    static OneOf<string> Drive(Dice dice) => new(dice.Shuffled(Drives)[..dice.Between(1, 2)]);

    static Joint Measured(Joint joint, Dice dice) => joint with
    {
        Adhesive = joint.Adhesive! with
        {
            PeelNPer25Mm = dice.Number(1, 40),
            ShearMPa = dice.Number(0, 3),
            WidthMm = dice.Number(1, 30),
            AreaMm2 = dice.Number(10, 5000),
            SoftensAtC = dice.Number(50, 150),
        },
    };
}
