using FixScore.Criteria.Modularity;

namespace FixScore.Criteria.Tests.Modularity;

/// <summary>No published source: the rule and its points are own judgement.</summary>
public sealed class Part_modularity_tests
{
    static readonly PartModularityCriterion Criterion = new();
    static readonly Joint Plug = Connector(ConnectorType.BoardToBoard);

    [Fact]
    public void Joints_that_were_not_recorded_are_unknown() =>
        Assert.Equal(OutcomeKind.Unknown, Criterion.On(Port(Plug) with { Joints = default }, "port").Kind);

    [Fact]
    public void A_part_replaced_alone_and_plugged_in_has_the_top() => Scores(100, Port(Plug));

    [Fact]
    public void A_part_that_nothing_connects_has_the_level_none()
    {
        var outcome = Criterion.On(Port(Sample.Joint("screws", JointKind.Screw, "port", "frame")), "port");
        Assert.Equal(100, outcome.Score);
        Assert.Equal<Interval?>(100, outcome.Because("not-connected").Points);
    }

    [Fact]
    public void A_part_of_whose_joints_nothing_is_said_may_connect_in_any_way() =>
        Scores(new(10, 100), Port(Sample.Joint("clip", JointKind.SnapFit, "frame", "mainboard")));

    [Theory]
    [InlineData(JointKind.Solder)]
    [InlineData(JointKind.Weld)]
    public void A_soldered_or_welded_part_has_the_level_of_solder(JointKind kind) =>
        Scores(10, Port(Sample.Joint("wires", kind, "port", "mainboard")));

    [Fact]
    public void A_soldered_wire_is_solder_and_an_unknown_connector_may_be_one()
    {
        Scores(10, Port(Connector(ConnectorType.SolderedWire)));
        Scores(100, Port(Connector(ConnectorType.SpringContact)));
        Scores(new(10, 100), Port(Connector(default)));
        Scores(new(10, 100), Port(Connector(new(ConnectorType.Plug, ConnectorType.SolderedWire))));
    }

    [Fact]
    public void The_worst_connection_counts() =>
        Scores(10, Port(Plug, Sample.Joint("wires", JointKind.Solder, "port", "mainboard")));

    [Fact]
    public void What_rides_on_a_part_connects_it_and_need_not_be_taken_off()
    {
        var record = Port(
            Sample.Joint("inner", JointKind.Solder, "port", "flex"),
            Sample.Joint("outer", JointKind.Connector, "flex", "mainboard") with { Connector = new(ConnectorType.Plug) }) with
        {
            Parts = [Sample.Part("frame"), Sample.Part("mainboard"), Sample.Part("port"), Sample.Part("flex", on: "port")],
        };
        Assert.Equal("/joints/1", Criterion.On(record, "port").Because("connection").Pointers[0].Text);
        Assert.Equal(10, Criterion.On(record, "flex").Score);
    }

    [Fact]
    public void Integral_parts_are_replaced_together_and_inert_ones_do_not_count()
    {
        Joint Integral(string id, string other) => Sample.Joint(id, JointKind.Adhesive, "port", other) with { Integral = true };
        Scores(60, Port(Plug, Integral("one", "microphone"), Integral("shell", "bracket")));
        Scores(30, Port(Plug, Integral("one", "microphone"), Integral("two", "antenna")));
    }

    [Fact]
    public void A_bundle_counts_as_replaced_together_once_with_the_group()
    {
        var record = Port(Plug, Sample.Joint("one", JointKind.Adhesive, "port", "microphone") with { Integral = true }) with
        {
            Spares = [Spare("microphone", "antenna")],
        };
        Scores(30, record);
        Assert.Equal("/spares/0", Criterion.On(record, "port").Because("only-in-bundle").Pointers[0].Text);
        Assert.Equal(60, Criterion.On(record, "port", (PartModularityOptions.Bundles, false)).Score);
    }

    [Fact]
    public void Of_several_spares_the_one_that_brings_fewest_counts() =>
        Scores(100, Port(Plug) with { Spares = [Spare("microphone", "antenna"), Spare()] });

    [Fact]
    public void A_spare_not_listed_may_come_with_any_others_and_an_empty_list_says_there_is_none()
    {
        var unlisted = Port(Plug) with { Spares = [new() { Part = "antenna" }] };
        Scores(new(15, 100), unlisted);
        Assert.Equal("a spare for it", Assert.Single(Criterion.On(unlisted, "port").Missing).What);
        Scores(100, unlisted with { Spares = [] });
    }

    [Fact]
    public void Without_joints_a_known_bundle_says_nothing_because_the_group_is_not_known() => Assert.Equal(
        OutcomeKind.Unknown, Criterion.On(Port(Plug) with { Joints = default, Spares = [Spare("microphone", "antenna")] }, "port").Kind);

    [Fact]
    public void The_mean_takes_half_of_each() => Assert.Equal(55, Criterion.On(
        Port(Sample.Joint("wires", JointKind.Solder, "port", "mainboard")), "port", (PartModularityOptions.Combine, Combine.Mean)).Score);

    static void Scores(Interval expected, TeardownRecord record)
    {
        var outcome = Criterion.On(record, "port");
        Assert.Equal(expected, outcome.Score);
        outcome.PointsInto(record);
    }

    static Joint Connector(OneOf<ConnectorType> type) =>
        Sample.Joint("plug", JointKind.Connector, "port", "mainboard") with { Connector = new(type) };

    static Spare Spare(params ImmutableArray<string> with) => new() { Part = "port", OnlyBundledWith = with };

    static TeardownRecord Port(params ReadOnlySpan<Joint> joints) => Sample.Record(
        Sample.Part("frame"), Sample.Part("bracket"), Sample.Part("mainboard"), Sample.Part("port", "charging-port"),
        Sample.Part("microphone"), Sample.Part("antenna")) with
    {
        Joints = EntryList.Of(joints),
        Spares = [Spare()],
    };
}
