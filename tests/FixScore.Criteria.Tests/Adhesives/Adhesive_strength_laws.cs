using FixScore.Criteria.Adhesives;

namespace FixScore.Criteria.Tests.Adhesives;

public sealed class Adhesive_strength_laws
{
    static readonly AdhesiveStrengthCriterion Criterion = new();
    static readonly string[] Ids = ["card", "plate-60", "plate-100", "oven", "dropper"];
    static readonly Gen<ImmutableArray<string>> Set = Gen.Int[0, 4].Select(i => Ids[i]).HashSet[0, 2].Select(set => set.Order().ToImmutableArray());
    static readonly Gen<OperationAction> Action = Gen.Int[0, 3].Select(i =>
        new[] { OperationAction.Pry, OperationAction.Pull, OperationAction.Heat, OperationAction.ApplySolvent }[i]);

    static readonly Gen<Operation> Way = Gen.Select(Action, Set, Set, Gen.Bool, Gen.Bool, Gen.Int[0, 3]).Select((action, tools, or, other, damages, warm) =>
        new Operation
        {
            Id = "out", Action = action, Tools = EntryList.Of(tools), OrTools = other ? [or] : [], Undoes = ["glue"],
            Damages = damages && warm == 0 ? ["frame"] : [], DirectlyAfter = warm == 1 ? "warm" : null,
            After = warm == 2 ? [new Condition.Done("warm")] : [],
        });

    static readonly Gen<TeardownRecord> Records = Gen.Select(Way.Array[0, 3], Set, Action, Gen.Enum<AdhesiveType>()).Select((ways, heat, action, type) =>
        Bonded.With(
            Bonded.Glue with { Adhesive = new() { Type = type } },
            [new() { Id = "warm", Action = action, Tools = EntryList.Of(heat) }, .. ways.Select((way, i) => way with { Id = $"out-{i}" })]));

    [Fact]
    public void Taking_an_observation_away_only_widens() => Gen.Select(Records, Gen.Int[0, 4], Gen.Int[0, 2]).Sample((record, which, what) =>
        Assert.True(Score(Without(record, which, what)).Contains(Score(record))));

    [Fact]
    public void Taking_all_tools_away_only_widens() => Records.Sample(record =>
    {
        var without = record with { Operations = [.. record.Operations.Select(each => each with { Tools = default, OrTools = [] })] };
        Assert.True(Score(without with { Tools = default }).Contains(Score(without)));
        Assert.True(Score(without with { Operations = [] }).Contains(Score(without with { Tools = default })));
    });

    [Fact]
    public void A_gentler_means_never_lowers_the_score()
    {
        ImmutableArray<Operation> harsher =
        [
            Bonded.Out() with { Damages = ["frame"] }, Bonded.Out("plate-100"), Bonded.Out("dropper"), Bonded.Out("plate-60"),
            Bonded.Out("card"), Bonded.Out(),
        ];
        Gen.Select(Gen.Int[0, 4], Records).Sample((i, record) =>
            Assert.True(Low(record, harsher[i]) <= Low(record, harsher[i + 1])));

        static decimal Low(TeardownRecord record, Operation way) => Score(record with { Operations = [record.Operations[0], way] }).Low;
    }

    [Fact]
    public void Another_way_to_open_a_bond_never_lowers_the_score() => Gen.Select(Records, Way).Where((record, _) => record.Operations.Count > 1).Sample(
        (record, way) =>
        {
            var (before, after) = (Score(record), Score(record with { Operations = [.. record.Operations, way with { Id = "new" }] }));
            Assert.True(before.Low <= after.Low && before.High <= after.High);
        });

    [Fact]
    public void The_order_of_operations_does_not_matter() => Records.Sample(record =>
        Assert.Equal(Score(record), Score(record with { Operations = [.. record.Operations.Reverse()] })));

    [Fact]
    public void A_stronger_bond_never_scores_higher_where_force_decides() => Gen.Select(Gen.Int[0, 800], Gen.Int[0, 800]).Sample((a, b) =>
        Assert.True(Decided(Math.Max(a, b)) <= Decided(Math.Min(a, b))));

    [Fact]
    public void Reasons_point_at_what_is_there() => Records.Sample(record => Criterion.On(record, "battery").PointsInto(record));

    static Interval Score(TeardownRecord record) => Criterion.On(record, "battery").Known();

    static decimal Decided(decimal peel) => Criterion.On(
        Bonded.With(Bonded.Glue with { Adhesive = new() { PeelNPer25Mm = peel, WidthMm = 10 } }),
        "battery", (AdhesiveStrengthOptions.Tolerance, 1m)).Score.Low;

    static TeardownRecord Without(TeardownRecord record, int which, int what) => what switch
    {
        0 => record with { Joints = [record.Joints[0] with { Adhesive = null }] },
        1 => record with { Joints = default },
        _ => record with { Operations = [.. record.Operations.Select((each, i) => i == which ? each with { Tools = default } : each)] },
    };
}
