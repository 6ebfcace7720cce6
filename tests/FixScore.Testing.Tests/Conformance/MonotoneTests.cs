using FixScore.Records;

namespace FixScore.Testing.Tests;

public sealed class MonotoneTests
{
    static readonly MonotonePair Pair = new("a joint can be used again", Joined(Reuse.Neither), Joined(Reuse.Reusable));

    [Fact]
    public void Better_records_that_get_more_are_fine() =>
        Assert.Empty(CriterionConformance.Check(Stub.Good, new() { Pairs = [Pair] }));

    [Fact]
    public void Better_records_that_get_less_are_found()
    {
        var report = CriterionConformance.Check(Stub.Good, new() { Pairs = [new(Pair.Name, Pair.Better, Pair.Worse)] });

        var finding = Assert.Single(report);
        Assert.Equal((ConformanceCodes.NotMonotone, Pair.Name), (finding.Code, finding.Sample));
    }

    [Fact]
    public void An_unknown_worse_record_counts_as_the_whole_scale() => Assert.Equal(
        [ConformanceCodes.NotMonotone],
        ConformanceTests.Codes(Stub.Good, new() { Pairs = [new("unknown to bad", new RecordBuilder().Build(), Pair.Worse)] }));

    [Fact]
    public void Parts_are_compared_by_id()
    {
        var (worse, better) = (Serialised(SerialAction.Remote), Serialised(SerialAction.None));

        Assert.Empty(CriterionConformance.Check(PartStub.Good, new() { Pairs = [new("less to notify", worse, better)] }));
        Assert.Equal([ConformanceCodes.NotMonotone], ConformanceTests.Codes(PartStub.Good, new() { Pairs = [new("more to notify", better, worse)] }));
    }

    static TeardownRecord Joined(Reuse reuse) =>
        new RecordBuilder().Part("a").Part("b").Joint("j", ["a", "b"], JointKind.Latch, joint => joint with { Reuse = reuse }).Build();

    static TeardownRecord Serialised(SerialAction notify) => new RecordBuilder()
        .Part("battery", configure: part => part with { Serialised = new() { Notify = notify } }).Build();
}
