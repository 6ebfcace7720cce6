using FixScore.Records;

namespace FixScore.Testing.Tests;

public sealed class InvalidRecordTests
{
    [Fact]
    public void All_problems_are_named_at_once_and_where_they_stand()
    {
        var builder = new RecordBuilder()
            .Part("Battery!").Part("frame").Part("frame").Bond("bond", ["frame", "shield"]).Tool("product", ToolClass.Basic);

        var problems = Assert.Throws<InvalidTestRecordException>(builder.Build).Problems;

        Assert.Equal(
            [("id-not-slug", "/parts/0"), ("id-taken", "/parts/2"), ("id-taken", "/tools/0"), ("id-dangling", "/joints/0")],
            problems.Select(problem => (problem.Code, problem.At.Text)));
    }

    [Fact]
    public void An_invalid_builder_stays_open()
    {
        var builder = new RecordBuilder().Part("battery", on: "tray");
        Assert.Throws<InvalidTestRecordException>(builder.Build);

        Assert.Equal(2, builder.Part("tray").Build().Parts.Count);
    }

    public static TheoryData<string, Func<RecordBuilder, RecordBuilder>> Dangling => new()
    {
        { "under", b => b.Part("a").Part("b").Joint("j", ["a", "b"], JointKind.Latch, j => j with { Under = ["gone"] }) },
        { "tools", b => b.Operation("o", OperationAction.Pry, ["gone"]) },
        { "undoes", b => b.Operation("o", OperationAction.Pry, undoes: ["gone"]) },
        { "removes", b => b.Operation("o", OperationAction.Pry, removes: ["gone"]) },
        { "after", b => b.Operation("o", OperationAction.Pry, after: [new Condition.AllOf([new Condition.Undone("gone")])]) },
        { "directly after", b => b.Operation("o", OperationAction.Pry, configure: o => o with { DirectlyAfter = "gone" }) },
        { "host", b => b.Swap("s", "gone", []) },
        { "installed", b => b.Swap("s", "unit-a", [("gone", "unit-b")]) },
        { "from", b => b.Part("a").Swap("s", "unit-a", [("a", "gone")]) },
        { "lock", b => b.Lock("l", "gone", LockState.Locked, LockState.Unlocked) },
        { "spare", b => b.Spare("gone") },
        { "document", b => b.Document(DocumentSubject.SafetyData, configure: d => d with { Parts = ["gone"] }) },
        { "observation", b => b.Observe("acme.latch", true, "gone") },
        { "sequence", b => b.Sequence("s", "mainboard", SequenceAuthor.Maker, "gone") },
        { "milestone", b => b.Milestone("m", new Condition.Done("gone")) },
        { "remark", b => b.Remark("topic", "text", "gone") },
        { "evidence", b => b.Part("a", configure: part => part with { Evidence = ["gone"] }) },
    };

    [Theory]
    [MemberData(nameof(Dangling))]
    public void A_dangling_id_is_found(string where, Func<RecordBuilder, RecordBuilder> add)
    {
        var problems = Assert.Throws<InvalidTestRecordException>(add(new()).Build).Problems;

        Assert.True(problems is [{ Code: "id-dangling" }], $"{where}: {string.Join("; ", problems)}");
        Assert.Contains("'gone'", problems[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_id_of_another_kind_dangles()
    {
        var builder = new RecordBuilder().Part("frame").Spare("unit-a");

        Assert.Throws<InvalidTestRecordException>(builder.Build);
    }
}
