using FixScore.Criteria.Modularity;

namespace FixScore.Criteria.Tests.Modularity;

public sealed class Part_modularity_laws
{
    static readonly PartModularityCriterion Criterion = new();
    static readonly string[] Ids = ["frame", "mainboard", "port", "microphone", "antenna"];

    static readonly Gen<Joint> AnyJoint = Gen.Select(
        Gen.Int[0, 4], Gen.Int[1, 4], Gen.Enum<JointKind>(), Gen.Int[0, 3], Gen.Enum<ConnectorType>()).Select((a, step, kind, integral, type) =>
            Sample.Joint("j", kind, Ids[a], Ids[(a + step) % 5]) with
            {
                Integral = integral == 0,
                Connector = kind == JointKind.Connector ? new(type) : null,
            });

    static readonly Gen<Spare> AnySpare = Gen.Select(Gen.Int[0, 4], Gen.Int[0, 4].HashSet[0, 3], (part, with) =>
        new Spare { Part = Ids[part], OnlyBundledWith = [.. with.Order().Select(i => Ids[i])] });

    static readonly Gen<TeardownRecord> Records = Gen.Select(AnyJoint.Array[0, 5], AnySpare.Array[0, 3], (joints, spares) =>
        Sample.Record([.. Ids.Select(id => Sample.Part(id))]) with
        {
            Joints = [.. joints.Select((joint, i) => joint with { Id = $"j-{i}" })],
            Spares = [.. spares],
        });

    [Fact]
    public void Taking_an_observation_away_only_widens() => Gen.Select(Records, Gen.Int[0, 3]).Sample((record, what) =>
        Assert.All(Ids, part => Assert.True(Score(Without(record, what), part).Contains(Score(record, part)))));

    [Fact]
    public void One_more_part_in_the_bundle_never_raises_the_score() => Records.Where(record => record.Spares.Count > 0).Sample(record =>
    {
        var first = record.Spares[0];
        var more = first with { OnlyBundledWith = [.. Ids] };
        var score = Score(record with { Spares = [more] }, first.Part);
        var before = Score(record with { Spares = [first] }, first.Part);
        Assert.True(score.Low <= before.Low && score.High <= before.High);
    });

    [Fact]
    public void The_order_of_joints_and_spares_does_not_matter() => Records.Sample(record =>
    {
        var turned = record with { Joints = [.. record.Joints.Reverse()], Spares = [.. record.Spares.Reverse()] };
        Assert.All(Ids, part => Assert.Equal(Score(record, part), Score(turned, part)));
    });

    [Fact]
    public void Reasons_point_at_what_is_there() => Records.Sample(record =>
        Assert.All(Ids, part => Criterion.On(record, part).PointsInto(record)));

    static Interval Score(TeardownRecord record, string part) => Criterion.On(record, part).Known();

    static TeardownRecord Without(TeardownRecord record, int what) => what switch
    {
        0 => record with { Joints = default },
        1 => record with { Spares = default },
        2 => record with { Joints = default, Spares = default },
        _ => record with { Joints = [.. record.Joints.Select(joint => joint with { Connector = null })] },
    };
}
