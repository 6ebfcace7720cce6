using FixScore.Records;
using FixScore.Testing;

namespace FixScore.Disassembly.Tests.Routes;

/// <summary>What a route tells beside its operations, and what counts as the same question.</summary>
public sealed class RouteAnswerTests
{
    [Fact]
    public void Of_a_part_that_cannot_be_reached_there_are_no_numbers()
    {
        var route = Slate().Part("core", configure: part => part with { Reach = Reach.NotPossible }).ToCase().RouteTo("core");
        Assert.Equal((null, null, null, null), (route.Steps, route.Operations, route.Seconds, route.LowerBound));
        Assert.Equal((null, null, true), (route.Way, route.LeastWay, route.IsOptimal));
        Assert.Empty(route.Ways);
    }

    [Fact]
    public void Seconds_and_the_bound_are_in_seconds_when_time_is_asked_for()
    {
        var route = Slate().ToCase().RouteTo("board", RouteCost.Seconds);
        Assert.Equal((new Interval(4, 7), 5.5m, 2), (route.Seconds, route.LowerBound, route.Operations));
    }

    // Where times are ranges their middle counts, also when it lies between two of the smallest numbers a quantity can have.
    [Theory]
    [InlineData("3", "4.0000000001", 3.50000000005)]
    [InlineData("0.000000000001", "0.000000000002", 0.0000000000015)]
    public void The_middle_of_a_time_is_exact(string min, string max, decimal middle)
    {
        var range = new Quantity(decimal.Parse(min, System.Globalization.CultureInfo.InvariantCulture), decimal.Parse(max, System.Globalization.CultureInfo.InvariantCulture));
        var source = new RecordBuilder().Part("lid").Part("board").Joint("screw", ["lid", "board"], JointKind.Screw).Operation("turn", OperationAction.Unscrew, [], ["screw"], seconds: range).ToCase();
        Assert.Equal(middle, source.RouteTo("lid", RouteCost.Seconds).LowerBound);
    }

    [Fact]
    public void A_bound_of_time_is_left_out_where_a_time_is_unknown() =>
        Assert.Null(Slate().Part("rim").Joint("edge", ["rim", "lid"], JointKind.SnapFit).Operation("unclip", OperationAction.Unclip, [], ["edge"]).ToCase().RouteTo("rim", RouteCost.Seconds).LowerBound);

    [Fact]
    public void The_longest_wait_is_the_longest()
    {
        var way = Slate().Operation("glue", OperationAction.Heat, [], configure: heat => heat with { WaitSeconds = 9 })
            .With(record => record with { Operations = [.. record.Operations.Select((each, at) => each with { WaitSeconds = new Quantity(10 - at, 60 - (10 * at)) })] }).ToCase().RouteTo("board").Way!;
        Assert.Equal(60, way.LongestWait);
    }

    [Fact]
    public void Unknown_tools_make_two_ways_of_one_question()
    {
        var route = new RecordBuilder().Part("lid").Part("board").Joint("screw", ["lid", "board"], JointKind.Screw).Joint("clip", ["lid", "board"], JointKind.SnapFit).Tool("driver", ToolClass.Basic)
            .Operation("turn", OperationAction.Unscrew, ["driver"], ["screw"]).Operation("lever", OperationAction.Pry, default, ["clip"]).ToCase().RouteTo("lid");
        Assert.Equal(new Interval(1, 2), route.Steps);
    }

    [Theory]
    [InlineData(RouteCost.Steps, FirstTool.NoChange, 10, "lid board", true)]
    [InlineData(RouteCost.Operations, FirstTool.NoChange, 10, "lid board", false)]
    [InlineData(RouteCost.Steps, FirstTool.Change, 10, "lid board", false)]
    [InlineData(RouteCost.Steps, FirstTool.NoChange, 11, "lid board", false)]
    [InlineData(RouteCost.Steps, FirstTool.NoChange, 10, "board lid", false)]
    [InlineData(RouteCost.Steps, FirstTool.NoChange, 10, "lid", false)]
    public void Questions_are_the_same_by_what_they_ask(RouteCost cost, FirstTool first, int effort, string parts, bool same)
    {
        RouteQuery one = new(["lid", "board"], RouteCost.Steps, FirstTool.NoChange, 10), other = new([.. parts.Split(' ')], cost, first, effort);
        Assert.Equal(same, one.Equals(other));
        if (same) Assert.Equal(one.GetHashCode(), other.GetHashCode());
        Assert.False(one.Equals(null));
    }

    [Fact]
    public void A_question_without_a_part_is_refused() =>
        Assert.Contains("A route needs a part to free.", Assert.Throws<ArgumentException>(() => Slate().ToCase().RouteToAll([])).Message, StringComparison.Ordinal);

    [Fact]
    public void Recorded_ways_are_those_to_the_part_alone_that_can_be_done()
    {
        var source = Slate().Sequence("to-lid", "lid", SequenceAuthor.Maker, "turn", "lift").Sequence("to-board", "board", SequenceAuthor.Assessor, "turn", "free")
            .Sequence("wrong", "board", SequenceAuthor.Maker, "free", "turn").Sequence("again", "board", SequenceAuthor.Maker, "turn", "free", "lift", "lift-again").ToCase();
        Assert.Equal(["to-board", "again"], source.RouteTo("board").Recorded.Select(recorded => recorded.Sequence.Id));
        Assert.Equal(["to-lid"], source.RouteTo("lid").Recorded.Select(recorded => recorded.Sequence.Id));
        Assert.Empty(source.RouteToAll(["lid", "board"]).Recorded);
    }

    // No part is damaged where joints can be instead, however many; the weights are our own judgement.
    [Theory]
    [InlineData("board", "joint1 joint2", "cut")]
    [InlineData("joint1 joint2", "board", "pry")]
    [InlineData("joint1 joint2", "joint1", "cut")]
    [InlineData("joint1", "joint2", "pry")]
    [InlineData("board lid2", "board joint1 joint2", "cut")]
    public void The_way_with_least_damage_spares_parts_before_joints(string byPrying, string byCutting, string way)
    {
        var source = new RecordBuilder().Part("lid").Part("board").Part("lid2").Joint("screw", ["lid", "board"], JointKind.Screw)
            .Joint("joint1", ["board", "lid2"], JointKind.SnapFit).Joint("joint2", ["board", "lid2"], JointKind.SnapFit)
            .Operation("pry", OperationAction.Pry, [], ["screw"], configure: pry => pry with { Damages = [.. byPrying.Split(' ')] })
            .Operation("cut", OperationAction.Other, [], ["screw"], configure: cut => cut with { Damages = [.. byCutting.Split(' ')] }).ToCase();
        foreach (var cost in Enum.GetValues<RouteCost>()) Assert.Equal(way, Assert.Single(source.RouteTo("lid", cost).Way!.Operations));
    }

    // Each milestone leads to the other by a choice, and to an operation of its own.
    [Theory]
    [InlineData("first", "turn")]
    [InlineData("second", "turn")]
    [InlineData("third", "free")]
    public void Milestones_that_lead_back_to_each_other_by_a_choice_are_no_help_to_themselves(string milestone, string way)
    {
        var source = new RecordBuilder().Part("lid").Part("board").Joint("screw", ["lid", "board"], JointKind.Screw)
            .Milestone("first", new Condition.AnyOf([new Condition.Done("second"), new Condition.Done("turn")]))
            .Milestone("second", new Condition.AnyOf([new Condition.Done("first"), new Condition.Done("free")]))
            .Milestone("third", new Condition.AllOf([new Condition.Done("second"), new Condition.Done("free")]))
            .Operation("turn", OperationAction.Other, [], seconds: 1).Operation("free", OperationAction.Other, [], seconds: 1)
            .Operation("lift", OperationAction.Lift, [], ["screw"], after: [new Condition.Done(milestone)], seconds: 1)
            .Operation("other", OperationAction.Lift, [], ["screw"], after: [new Condition.Done("first"), new Condition.Done("second"), new Condition.Done("third")], seconds: 1).ToCase();
        Assert.Equal([way, "lift"], source.RouteTo("lid", RouteCost.Operations).Way!.Operations.AsEnumerable());
    }

    static RecordBuilder Slate() => new RecordBuilder().Part("lid").Part("board").Part("frame")
        .Joint("screw", ["lid", "board"], JointKind.Screw).Joint("clip", ["board", "frame"], JointKind.SnapFit)
        .Operation("turn", OperationAction.Unscrew, [], ["screw"], seconds: new Quantity(1, 3))
        .Operation("free", OperationAction.Unclip, [], ["clip"], after: [new Condition.Done("turn")], seconds: new Quantity(3, 4))
        .Operation("lift", OperationAction.Lift, [], default, ["lid"], seconds: 1)
        .Operation("lift-again", OperationAction.Lift, [], default, ["lid"], seconds: 1);
}
