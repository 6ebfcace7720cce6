using FixScore.Records;

namespace FixScore.Testing.Tests;

public sealed class WideningTests
{
    [Fact]
    public void Taking_the_unknown_for_the_worst_is_found()
    {
        var findings = CriterionConformance.Check(Stub.Judging(context => Stub.Points(context, ShareOf(context, joint => joint.Reuse.Is(Reuse.Reusable)))));

        Assert.All(findings, finding => Assert.Equal(ConformanceCodes.Narrows, finding.Code));
        Assert.Contains(findings, finding => finding.Sample == "glued-tablet without joints");
    }

    [Fact]
    public void Taking_the_unknown_for_the_best_is_found() =>
        Assert.Equal([ConformanceCodes.Narrows], ConformanceTests.Codes(Stub.Judging(context =>
            Stub.Points(context, ShareOf(context, joint => joint.Reuse.MayBe(Reuse.Reusable))))));

    [Fact]
    public void A_question_that_stops_arising_when_less_is_known_is_found() =>
        Assert.Equal([ConformanceCodes.Narrows], ConformanceTests.Codes(Stub.Judging(context => context.Case.Record.Joints.IsRecorded
            ? Outcome.Scored(context.Scale.Whole, Reason.Of("some", "Joints.", []))
            : Outcome.NotApplicable(Reason.Of("none", "No joints.", [])))));

    [Fact]
    public void A_question_that_starts_arising_when_less_is_known_is_fine()
    {
        var criterion = new Stub(Stub.Good.Info with { Reads = ["absent"] }, context => context.Case.Record.Absent.Contains("hinge")
            ? Outcome.NotApplicable(Reason.Of("none", "No hinge.", []))
            : Outcome.Scored(context.Scale.Max, Reason.Of("all", "All.", [])));

        Assert.Empty(CriterionConformance.Check(criterion));
    }

    [Fact]
    public void Observations_the_author_supplies_are_deleted_too()
    {
        var criterion = new Stub(Stub.Good.Info with { Reads = ["observations/acme.latch"] }, context =>
            Stub.Points(context, context.Case.Record.Observations.Any(each => each.Flag == true) ? 1 : 0));
        var record = new RecordBuilder("latched").Observe("acme.latch", true).Build();

        Assert.Empty(CriterionConformance.Check(criterion));
        Assert.Equal("latched without observations/acme.latch", Assert.Single(CriterionConformance.Check(criterion, new() { Samples = [record] })).Sample);
    }

    static decimal ShareOf(DeviceContext context, Func<Joint, bool> counts) => context.Case.Record.Joints is { Count: > 0 } joints
        ? (decimal)joints.Count(counts) / joints.Count
        : 0;
}
