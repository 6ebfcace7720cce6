using FixScore.Records;

namespace FixScore.Testing.Tests;

public sealed class RecordBuilderTests
{
    [Fact]
    public void An_empty_builder_makes_a_record_of_one_part_and_two_identical_units()
    {
        var record = new RecordBuilder().Build();

        Assert.Equal(["mainboard"], record.Parts.Select(part => part.Id));
        Assert.Equal(["unit-a", "unit-b"], record.Assessment.Units.Select(unit => unit.Id));
        Assert.False(record.Joints.IsRecorded);
    }

    [Fact]
    public void A_role_left_out_is_the_id_and_decides_whether_the_part_is_inert()
    {
        var parts = new RecordBuilder().Part("frame").Part("cell", Roles.Battery).Build().Parts;

        Assert.Equal(("frame", true), (parts[0].Role, parts[0].Inert));
        Assert.Equal(("battery", false), (parts[1].Role, parts[1].Inert));
    }

    [Fact]
    public void Joints_carry_what_their_kind_asks_for()
    {
        var joints = new RecordBuilder().Part("a").Part("b")
            .Screw("screws", ["a", "b"], "hexalobular", 1.4m, new(3, 4), 6)
            .Bond("bond", ["a", "b"], AdhesiveType.Foam, joint => joint with { Adhesive = joint.Adhesive! with { WidthMm = 2 } })
            .Plug("plug", ["a", "b"])
            .Build().Joints;

        Assert.Equal(new Screw("hexalobular", 1.4m, new(3, 4)), joints[0].Screw);
        Assert.Equal((Quantity)6, joints[0].Count);
        Assert.Equal(((Quantity?)2, true), (joints[1].Adhesive!.WidthMm, joints[1].Adhesive!.Type.Is(AdhesiveType.Foam)));
        Assert.True(joints[2].Connector!.Type.IsUnknown);
    }

    [Fact]
    public void Tools_left_out_are_unknown_and_no_tools_are_bare_hands()
    {
        var operations = new RecordBuilder().Operation("some", OperationAction.Pry).Operation("hand", OperationAction.Pry, []).Build().Operations;

        Assert.False(operations[0].Tools.IsRecorded);
        Assert.True(operations[1].Tools is { IsRecorded: true, Count: 0 });
    }

    [Fact]
    public void A_swap_says_what_went_where_and_how_functions_behaved()
    {
        var trial = new RecordBuilder().Part("display")
            .Swap("swap", "unit-a", [("display", "unit-b")], ("touch", SwapResult.Works), ("picture", new(SwapResult.Notice, SwapResult.Warning)))
            .Build().Swaps[0];

        Assert.Equal(new("display", "unit-b"), Assert.Single(trial.Installed));
        Assert.Equal(["touch", "picture"], trial.Checks.Select(check => check.Function));
        Assert.True(trial.Checks[1].Result.MayBe(SwapResult.Warning));
    }

    [Fact]
    public void Observations_keep_the_kind_of_their_value()
    {
        var observed = new RecordBuilder().Observe("acme.gap", 3, "mm").Observe("acme.latch", true).Observe("acme.colour", "grey").Build().Observations;

        Assert.Equal(((Quantity?)3, "mm"), (observed[0].Number, observed[0].Unit));
        Assert.True(observed[1].Flag);
        Assert.Equal("grey", observed[2].Word);
    }

    [Fact]
    public void A_built_builder_gives_the_same_record_and_takes_no_change()
    {
        var builder = new RecordBuilder();
        var record = builder.Build();

        Assert.Same(record, builder.Build());
        Assert.Same(record, builder.ToCase().Record);
        Assert.Throws<InvalidOperationException>(() => builder.Part("battery"));
    }
}
