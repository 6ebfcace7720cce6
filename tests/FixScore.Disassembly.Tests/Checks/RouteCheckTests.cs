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

    static RecordBuilder Slate() => new RecordBuilder().Part("lid").Part("board").Joint("screw", ["lid", "board"], JointKind.Screw);

    static Problem[] Problems(RecordBuilder builder) => [.. new RouteCheck().Check(new RecordCase(builder.Build()))];
}
