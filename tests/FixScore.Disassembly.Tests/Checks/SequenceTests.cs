using FixScore.Records;
using FixScore.Testing;

namespace FixScore.Disassembly.Tests.Checks;

/// <summary>Recorded sequences that are impossible are errors that say where and why.</summary>
public sealed class SequenceTests
{
    [Fact]
    public void One_that_can_be_done_is_told_nothing_of() => Assert.Empty(Problems("turn", "lift", "free"));

    [Fact]
    public void What_is_needed_first_is_told_at_its_place() => Told(
        "sequence-impossible", "/sequences/0/operations/0", "In the sequence 'filmed', 'lift' cannot be done there: 'screw' is not undone.", "Mend the order, or the conditions of the operation.",
        Problems("lift", "turn", "free"));

    [Fact]
    public void The_same_operation_twice_is_told_at_the_second() => Told(
        "sequence-operation-twice", "/sequences/0/operations/1", "'turn' stands twice in the sequence 'filmed'.", "Mend the order, or the conditions of the operation.",
        Problems("turn", "turn", "lift", "free"));

    [Fact]
    public void Removing_again_what_is_gone_is_told() => Told(
        "sequence-removes-twice", "/sequences/0/operations/2", "In the sequence 'filmed', 'lift-again' removes again what is gone already.", "Mend the order, or the conditions of the operation.",
        Problems("turn", "lift", "lift-again", "free"));

    [Fact]
    public void What_must_follow_at_once_and_does_not_is_told() => Told(
        "sequence-impossible", "/sequences/0/operations/2", "In the sequence 'filmed', 'quick' does not come directly after what it must follow.", "Mend the order, or the conditions of the operation.",
        Problems("turn", "lift", "quick", "free"));

    [Fact]
    public void What_follows_at_once_is_told_nothing_of() => Assert.Empty(Problems("turn", "quick", "lift", "free"));

    [Fact]
    public void Putting_together_on_the_way_in_is_told() => Told(
        "sequence-impossible", "/sequences/0/operations/1", "In the sequence 'filmed', 'close' puts together; a way to a part only takes apart.", "Mend the order, or the conditions of the operation.",
        Problems("turn", "close", "lift", "free"));

    [Fact]
    public void A_part_that_is_not_free_at_the_end_is_told_at_the_whole() => Told(
        "sequence-leaves-part-held", "/sequences/0/operations", "After the sequence 'filmed' the part 'board' is not free: 'clip' is not undone.", "Add what is missing at the end, or name another part.",
        Problems("turn", "lift"));

    [Fact]
    public void Each_sequence_is_judged_by_itself()
    {
        var problems = Check(Slate().Sequence("first", "board", SequenceAuthor.Assessor, "turn", "lift").Sequence("second", "lid", SequenceAuthor.Maker, "turn", "lift").Sequence("third", "lid", SequenceAuthor.Maker, "lift"));
        Assert.Equal(["/sequences/0/operations", "/sequences/2/operations/0"], problems.Select(problem => problem.At.Text));
    }

    [Theory]
    [MemberData(nameof(Waits), DisableDiscoveryEnumeration = true)]
    public void What_does_not_hold_yet_is_in_words(Condition condition, string missing) => Assert.Equal(
        $"In the sequence 'filmed', 'lift' cannot be done there: {missing}.",
        Assert.Single(Check(Slate(lift => lift with { After = [condition] }).Sequence("filmed", "board", SequenceAuthor.Assessor, "turn", "lift", "free"))).Message);

    public static TheoryData<Condition, string> Waits => new()
    {
        { new Condition.Undone("clip"), "'clip' is not undone" },
        { new Condition.Removed("shield"), "'shield' is not removed" },
        { new Condition.Away("shield"), "'shield' is not away" },
        { new Condition.Done("quick"), "'quick' is not done" },
    };

    [Fact]
    public void A_joint_under_a_part_that_is_there_is_in_words() => Assert.Equal(
        "In the sequence 'filmed', 'free' cannot be done there: 'shield' is still over 'clip'.",
        Assert.Single(Check(Slate(under: ["shield"]).Sequence("filmed", "board", SequenceAuthor.Assessor, "turn", "lift", "free"))).Message);

    [Fact]
    public void Removing_what_is_gone_together_with_what_is_not_is_no_slip() =>
        Assert.Empty(Check(Slate().Operation("both", OperationAction.Lift, [], default, ["lid", "shield"], [new Condition.Undone("clip")]).Sequence("filmed", "shield", SequenceAuthor.Assessor, "turn", "lift", "free", "both")));

    [Fact]
    public void Removing_again_what_is_gone_and_undoing_what_is_not_is_no_slip() =>
        Assert.Empty(Check(Slate().Operation("tear", OperationAction.Lift, [], ["clip"], ["lid"]).Sequence("filmed", "board", SequenceAuthor.Assessor, "turn", "lift", "tear")));

    static void Told(string code, string at, string message, string hint, Problem[] problems)
    {
        var problem = Assert.Single(problems);
        Assert.Equal((Severity.Error, code, at, message, hint), (problem.Severity, problem.Code, problem.At.Text, problem.Message, problem.Hint));
    }

    static Problem[] Problems(params string[] operations) => Check(Slate().Sequence("filmed", "board", SequenceAuthor.Assessor, [.. operations]));

    static Problem[] Check(RecordBuilder record) => [.. new RouteCheck().Check(new RecordCase(record.Build())).Where(problem => problem.Severity == Severity.Error)];

    static RecordBuilder Slate(Func<Operation, Operation>? lift = null, params string[] under) => new RecordBuilder().Part("lid").Part("board").Part("shield")
        .Joint("screw", ["lid", "board"], JointKind.Screw).Joint("clip", ["board", "shield"], JointKind.SnapFit, joint => joint with { Under = [.. under] })
        .Operation("turn", OperationAction.Unscrew, [], ["screw"])
        .Operation("lift", OperationAction.Lift, [], default, ["lid"], configure: lift)
        .Operation("lift-again", OperationAction.Lift, [], default, ["lid"])
        .Operation("quick", OperationAction.Other, [], configure: quick => quick with { DirectlyAfter = "turn" })
        .Operation("slide", OperationAction.Slide, [], configure: slide => slide with { Moves = ["shield"], HoldsBy = ["clip"] })
        .Operation("free", OperationAction.Unclip, [], ["clip"])
        .Operation("close", OperationAction.Other, [], configure: close => close with { Phase = OperationPhase.Reassembly });
}
