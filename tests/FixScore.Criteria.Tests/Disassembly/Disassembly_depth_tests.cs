using FixScore.Criteria.Disassembly;
using FixScore.Disassembly;
using FixScore.Testing;

namespace FixScore.Criteria.Tests.Disassembly;

/// <summary>Steps as in Regulation (EU) 2023/1669 Annex I (20); where it is silent, the readings of the options: own judgement, no source.</summary>
public sealed class Disassembly_depth_tests
{
    static readonly DisassemblyDepthCriterion Criterion = new();

    [Fact]
    public void The_way_is_told_with_its_operations_and_tools()
    {
        var way = Criterion.OnBattery(Device.Phone().Build()).Because("way");
        Assert.Equal("The shortest way to part battery takes 3 steps in 3 operations: warm, open, unscrew; tools: heat-gun, pick, driver.", way.Text);
        Assert.Equal(["/operations/0", "/operations/1", "/operations/2"], way.Pointers.Select(pointer => pointer.Text));
    }

    // Annex IV point 5: several tools needed at the same time are one step each.
    [Fact]
    public void Tools_needed_at_the_same_time_are_a_step_each() =>
        Depth(2, Device.Layers(1).Tool("a", ToolClass.Basic).Tool("b", ToolClass.Basic).With(WithTools(0, ["a", "b"])));

    [Fact]
    public void Tools_not_observed_give_a_range_and_are_asked_for()
    {
        var record = Device.Layers(2).Tool("hook", ToolClass.Basic)
            .With(record => record with { Operations = [record.Operations[0] with { Removes = [], Moves = [] }, record.Operations[1]] })
            .With(record => record with { Joints = [record.Joints[0], record.Joints[1] with { Under = [] }] })
            .With(record => record with { Operations = [record.Operations[0], record.Operations[1] with { After = [new Condition.Done("pull-1")] }] })
            .With(WithTools(0, ["hook"])).With(WithTools(1, default)).Build();
        var outcome = Criterion.OnBattery(record);
        Assert.Equal(new Interval(1, 2), outcome.Because("depth").Values[1].Value.Number);
        var missing = Assert.Single(outcome.Missing);
        Assert.Equal(("/operations/1", "tools"), (missing.At.Text, missing.What));
    }

    [Fact]
    public void The_first_tool_taken_up_in_an_open_step_is_a_change_by_option()
    {
        var record = Device.Layers(1).Tool("hook", ToolClass.Basic)
            .Operation("loosen", OperationAction.Unclip, [])
            .With(record => record with { Operations = [record.Operations[0] with { After = [new Condition.Done("loosen")] }, record.Operations[1]] })
            .With(WithTools(0, ["hook"])).Build();
        Assert.Equal(1, Measured(Criterion.OnBattery(record)));
        Assert.Equal(2, Measured(Criterion.OnBattery(record, (WayOptions.FirstTool, FirstTool.Change))));
    }

    [Fact]
    public void Operations_are_counted_by_option()
    {
        var record = Device.Layers(1).Operation("loosen", OperationAction.Unclip, [])
            .With(record => record with { Operations = [record.Operations[0] with { After = [new Condition.Done("loosen")] }, record.Operations[1]] }).Build();
        Assert.Equal(1, Measured(Criterion.OnBattery(record)));
        var outcome = Criterion.OnBattery(record, (DisassemblyDepthOptions.Cost, DepthCost.Operations));
        Assert.Equal("Part battery lies 2 operations deep.", outcome.Because("depth").Text);
    }

    [Theory]
    [InlineData(JudgedRoute.Shortest, 1, "shortest")]
    [InlineData(JudgedRoute.Maker, 2, "maker")]
    [InlineData(JudgedRoute.Assessor, 4, "assessor")]
    internal void A_recorded_way_is_judged_by_option_of_several_the_shortest(JudgedRoute route, int steps, string name)
    {
        var outcome = Criterion.OnBattery(Detours().Build(), (WayOptions.Route, route));
        Assert.Equal(steps, Measured(outcome));
        Assert.StartsWith($"The {name} way ", outcome.Because("way").Text, StringComparison.Ordinal);
        Assert.Equal(3, outcome.Reasons.Count(reason => reason.Code == "recorded-way"));
    }

    [Fact]
    public void Without_a_recorded_way_the_shortest_stands_in_and_says_so()
    {
        var outcome = Criterion.OnBattery(Device.Layers(3).Build(), (WayOptions.Route, JudgedRoute.Maker));
        Assert.Equal(3, Measured(outcome));
        Assert.Equal("No way to part battery is recorded by the maker; the shortest is judged.", outcome.Because("no-sequence").Text);
    }

    [Fact]
    public void A_part_that_only_damage_frees_has_the_lowest_whatever_has_no_level()
    {
        var record = Device.Layers(2).With(record => record with
        {
            Operations = [record.Operations[0] with { Damages = ["layer-1"] }, record.Operations[1]],
        }).Build();
        var outcome = Criterion.OnBattery(record, (Options.NoLevel, WhenNoLevel.Unknown));
        Assert.Equal(1, outcome.Score);
        Assert.Equal<Interval?>(1, outcome.Because("unreachable").Points);
    }

    [Fact]
    public void A_part_that_was_found_impossible_to_reach_has_the_lowest() => Assert.Equal(1, Criterion.OnBattery(
        Device.Layers(1, battery => battery with { Reach = Reach.NotPossible }).With(record => record with { Operations = [] }).Build()).Score);

    [Fact]
    public void A_part_of_which_nothing_tells_how_it_comes_free_is_unknown()
    {
        var outcome = Criterion.OnBattery(Device.Layers(2).With(record => record with { Operations = [record.Operations[0]] }).Build());
        Assert.Equal(OutcomeKind.Unknown, outcome.Kind);
        Assert.Contains(outcome.Missing, missing => missing.At.Text == "/joints/1");
    }

    [Fact]
    public void What_came_to_harm_on_some_unit_is_told_and_costs_nothing()
    {
        var record = Device.Layers(2).With(record => record with
        {
            Operations = [record.Operations[0] with { Outcomes = [new() { Unit = "unit-a", Result = OutcomeResult.Damaged, Damages = ["layer-1"] }] }, record.Operations[1]],
        }).Build();
        var outcome = Criterion.OnBattery(record);
        Assert.Equal(5, outcome.Score);
        Assert.Equal("/parts/1", Assert.Single(outcome.Because("at-risk").Pointers).Text);
    }

    [Fact]
    public void Harm_to_the_part_itself_is_told() => Assert.Equal("/parts/1", Assert.Single(Criterion.OnBattery(
        Device.Layers(1).With(record => record with { Operations = [record.Operations[0] with { Damages = ["battery"] }] }).Build())
            .Because("damages-itself").Pointers).Text);

    [Fact]
    public void Bands_without_an_end_leave_what_is_deeper_without_a_level()
    {
        var bands = Bands.AtMost((2, 5), (5, 4));
        Assert.Equal(new Interval(1, 5), Criterion.OnBattery(Device.Layers(6).Build(), (DisassemblyDepthOptions.Bands, bands)).Score);
        Assert.Equal(1, Criterion.OnBattery(
            Device.Layers(6).Build(), (DisassemblyDepthOptions.Bands, bands), (Options.NoLevel, WhenNoLevel.Lowest)).Score);
    }

    static void Depth(decimal steps, RecordBuilder record) => Assert.Equal(steps, Measured(Criterion.OnBattery(record.Build())));

    static decimal Measured(Outcome outcome)
    {
        var depth = outcome.Because("depth").Values.Single(value => value.Name == "depth").Value.Number;
        Assert.True(depth.IsExact);
        return depth.Low;
    }

    /// <summary>The battery comes out at once; the maker takes off one cover before, or two; the assessor three.</summary>
    static RecordBuilder Detours()
    {
        var builder = Device.Layers(4).With(record => record with { Joints = [.. record.Joints.Select(joint => joint with { Under = [] })] });
        return builder
            .Sequence("long", "battery", SequenceAuthor.Maker, "pull-1", "pull-2", "pull-4")
            .Sequence("short", "battery", SequenceAuthor.Maker, "pull-1", "pull-4")
            .Sequence("filmed", "battery", SequenceAuthor.Assessor, "pull-3", "pull-2", "pull-1", "pull-4");
    }

    static Func<TeardownRecord, TeardownRecord> WithTools(int index, EntryList<string> tools) => record => record with
    {
        Operations = [.. record.Operations.Select((operation, i) => i == index ? operation with { Tools = tools } : operation)],
    };
}
