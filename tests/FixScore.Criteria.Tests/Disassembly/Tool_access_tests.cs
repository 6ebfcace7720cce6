using FixScore.Criteria.Disassembly;
using FixScore.Testing;

namespace FixScore.Criteria.Tests.Disassembly;

/// <summary>Regulation (EU) 2023/1669 Annex IV point 5, tools: all rows of the table; terms in Annex I (42) to (44).</summary>
public sealed class Tool_access_tests
{
    static readonly ToolAccessCriterion Criterion = new();

    [Fact]
    public void No_tool_has_five()
    {
        var outcome = Criterion.OnBattery(Device.Layers(2).Build());
        Assert.Equal(5, outcome.Score);
        Assert.Equal<Interval?>(5, outcome.Because("bare-hands").Points);
    }

    [Theory]
    [InlineData(ToolClass.Basic, null, 4)]
    [InlineData(ToolClass.Commercial, "battery", 3)]
    [InlineData(ToolClass.Proprietary, "battery", 3)]
    [InlineData(ToolClass.Commercial, "product", 2)]
    [InlineData(ToolClass.Proprietary, "product", 2)]
    [InlineData(ToolClass.Commercial, null, 1)]
    [InlineData(ToolClass.Specialised, null, 1)]
    [InlineData(ToolClass.Basic, "product", 4)]
    [InlineData(ToolClass.Commercial, "frame", 1)]
    public void A_tool_has_the_points_of_its_class_or_its_supply_whichever_is_better(ToolClass @class, string? suppliedWith, int points) =>
        Assert.Equal(points, Criterion.OnBattery(Pulled(@class, suppliedWith)).Score);

    [Fact]
    public void A_proprietary_tool_has_no_level()
    {
        var record = Pulled(ToolClass.Proprietary);
        Assert.Equal(new Interval(1, 5), Criterion.OnBattery(record).Score);
        Assert.Equal(1, Criterion.OnBattery(record, (Options.NoLevel, WhenNoLevel.Lowest)).Score);
    }

    // Annex IV point 5: the worst level within the work counts, and only the work after the previous priority part.
    [Fact]
    public void The_worst_tool_counts_and_by_option_only_after_the_previous_priority_part()
    {
        var phone = Device.Phone().Build();
        var outcome = Criterion.Judged(phone, "battery", ["back-cover", "battery"]);
        Assert.Equal(1, outcome.Score);
        Assert.Equal(3, outcome.Reasons.Count(reason => reason.Code == "tool"));
        Assert.Equal(4, Criterion.Judged(phone, "battery", ["back-cover", "battery"], (WayOptions.From, WorkFrom.Previous)).Score);
        Assert.Equal(1, Criterion.Judged(phone, "cover", ["back-cover", "battery"], (WayOptions.From, WorkFrom.Previous)).Score);
    }

    [Fact]
    public void A_class_that_may_be_one_of_two_gives_both()
    {
        var outcome = Criterion.OnBattery(Pulled(new(ToolClass.Basic, ToolClass.Commercial)));
        Assert.Equal(new Interval(1, 4), outcome.Score);
        Assert.Equal("Tool hook, used for part battery, is basic or commercial.", outcome.Because("tool").Text);
        Assert.Equal(("/tools/0", "class"), (outcome.Missing[0].At.Text, outcome.Missing[0].What));
    }

    [Fact]
    public void Unknown_tools_may_be_any_but_no_better_than_those_known()
    {
        var unknown = Device.Layers(2).With(Without(0)).Build();
        Assert.Equal(new Interval(1, 5), Criterion.OnBattery(unknown).Score);
        var record = Device.Phone().With(Without(1)).Build();
        var outcome = Criterion.Judged(record, "battery", ["battery"], (Options.NoLevel, WhenNoLevel.Lowest));
        Assert.Equal(1, outcome.Score);
        Assert.Equal(("/operations/1", "tools"), (outcome.Missing[0].At.Text, outcome.Missing[0].What));
    }

    [Fact]
    public void The_tools_of_a_recorded_way_count_by_option()
    {
        var record = Device.Layers(1).Tool("hook", ToolClass.Basic)
            .Operation("hook-out", OperationAction.Pry, ["hook"], ["clip-1"], ["battery"])
            .Sequence("published", "battery", SequenceAuthor.Maker, "hook-out").Build();
        Assert.Equal(5, Criterion.OnBattery(record).Score);
        Assert.Equal(4, Criterion.OnBattery(record, (WayOptions.Route, JudgedRoute.Maker)).Score);
        Assert.Equal(5, Criterion.OnBattery(record, (WayOptions.Route, JudgedRoute.Assessor)).Score);
    }

    [Fact]
    public void A_part_that_nobody_could_reach_has_the_lowest() => Assert.Equal(1, Criterion.OnBattery(
        Device.Layers(1, battery => battery with { Reach = Reach.NotPossible }).With(record => record with { Operations = [] }).Build()).Score);

    static TeardownRecord Pulled(OneOf<ToolClass> @class, string? suppliedWith = null) => new RecordBuilder()
        .Part("frame").Part("battery").Joint("clip", ["battery", "frame"], JointKind.SnapFit)
        .Tool("hook", @class, tool => tool with { SuppliedWith = suppliedWith is null ? [] : [suppliedWith] })
        .Operation("pull", OperationAction.Pull, ["hook"], ["clip"], ["battery"]).Build();

    static Func<TeardownRecord, TeardownRecord> Without(int index) => record => record with
    {
        Operations = [.. record.Operations.Select((operation, i) => i == index ? operation with { Tools = default } : operation)],
    };
}
