using FixScore.Records;
using FixScore.Testing;

namespace FixScore.Disassembly.Tests.Checks;

/// <summary>Operations that can never be done and parts that nothing frees are warnings that say what is missing.</summary>
public sealed class RouteCheckTests
{
    public static TheoryData<Condition, string> Never => new()
    {
        { new Condition.Undone("screw"), "nothing that can be done undoes 'screw'" },
        { new Condition.Removed("board"), "nothing that can be done removes 'board'" },
        { new Condition.Away("board"), "nothing that can be done moves 'board' away" },
        { new Condition.Done("turn"), "'turn' can never be done" },
    };

    [Theory]
    [MemberData(nameof(Never), DisableDiscoveryEnumeration = true)]
    public void An_operation_that_waits_for_what_never_is_is_told(Condition condition, string missing)
    {
        var record = Slate().Operation("turn", OperationAction.Slide, configure: turn => turn with { After = [new Condition.Done("lift")] })
            .Operation("lift", OperationAction.Lift, configure: lift => lift with { Removes = ["lid"], After = [condition] });
        var problem = Problems(record).First(each => each.Code == "operation-never-possible" && each.Message.StartsWith("'lift'", StringComparison.Ordinal));
        Assert.Equal((Severity.Warning, $"'lift' can never be done: {missing}.", "/operations/1"), (problem.Severity, problem.Message, problem.At.Text));
    }

    [Fact]
    public void A_joint_under_a_part_that_stays_is_told()
    {
        var record = Slate().Joint("clip", ["lid", "board"], JointKind.SnapFit, clip => clip with { Under = ["cover"] })
            .Part("cover").Operation("unclip", OperationAction.Unclip, configure: each => each with { Undoes = ["clip"] });
        Assert.Equal("'unclip' can never be done: nothing that can be done moves 'cover' from over 'clip'.", Problems(record).First(each => each.Code == "operation-never-possible").Message);
    }

    [Fact]
    public void A_part_that_nothing_frees_is_told_with_what_holds_it()
    {
        var record = Slate().Operation("turn", OperationAction.Slide);
        Assert.Equal(
            ["Nothing frees 'lid': nothing that can be done undoes 'screw'.", "Nothing frees 'board': nothing that can be done undoes 'screw'."],
            Problems(record).Where(each => each.Code == "part-never-free").Select(each => each.Message));
    }

    [Fact]
    public void A_record_without_fault_is_told_nothing_of()
    {
        Assert.Equal("routes-are-possible", new RouteCheck().Id);
        Assert.Empty(Problems(Slate().Operation("turn", OperationAction.Unscrew, [], ["screw"]).Operation("lift", OperationAction.Lift, [], default, ["lid"])));
        Assert.Empty(Problems(Slate()));
        Assert.Empty(Problems(new RecordBuilder().Part("lid").Operation("turn", OperationAction.Slide)));
    }

    [Fact]
    public void What_to_do_is_told()
    {
        var problems = Problems(Slate().Operation("lift", OperationAction.Lift, [], default, ["lid"]));
        Assert.Equal(
            ["Record what comes before it, or mend its conditions.", "Record the operation, or say that the part cannot be reached with 'reach': 'not-possible'."],
            problems.Select(each => each.Hint).Distinct());
        Assert.Equal(["/operations/0", "/parts/0", "/parts/1"], problems.Select(each => each.At.Text));
    }

    [Fact]
    public void A_part_that_is_said_to_be_out_of_reach_is_none_that_nothing_frees_nor_is_its_group()
    {
        var record = new RecordBuilder().Part("lid").Part("rim", configure: part => part with { Reach = Records.Reach.NotPossible }).Part("board")
            .Joint("moulded", ["lid", "rim"], JointKind.Weld, joint => joint with { Integral = true }).Joint("screw", ["lid", "board"], JointKind.Screw).Operation("turn", OperationAction.Slide);
        Assert.Equal(["'board'"], Problems(record).Select(each => each.Message.Split(' ')[2].TrimEnd(':')));
    }

    [Fact]
    public void What_must_follow_at_once_and_cannot_is_told() => Assert.Equal(
        "'quick' can never be done: 'turn' is never done directly before it.",
        Problems(Slate().Operation("turn", OperationAction.Slide, configure: turn => turn with { After = [new Condition.Done("turn")] })
            .Operation("quick", OperationAction.Other, configure: quick => quick with { DirectlyAfter = "turn" })).Single(each => each.At.Text == "/operations/1").Message);

    static RecordBuilder Slate() => new RecordBuilder().Part("lid").Part("board").Joint("screw", ["lid", "board"], JointKind.Screw);

    static Problem[] Problems(RecordBuilder builder) => [.. new RouteCheck().Check(new RecordCase(builder.Build()))];
}
