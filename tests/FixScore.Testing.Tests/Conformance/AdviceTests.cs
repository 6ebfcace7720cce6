using FixScore.Records;

namespace FixScore.Testing.Tests;

public sealed class AdviceTests
{
    [Fact]
    public void Advice_that_applies_and_does_not_lower_passes() => Assert.Empty(CriterionConformance.Check(Advising(Reuse.Reusable)));

    [Fact]
    public void Advice_that_lowers_the_score_is_found() => Assert.Equal([ConformanceCodes.AdviceLowers], ConformanceTests.Codes(Advising(Reuse.Neither)));

    [Fact]
    public void A_patch_that_does_not_apply_is_found() => Assert.Equal([ConformanceCodes.AdviceMalformed],
        ConformanceTests.Codes(Advising(_ => new("away", Why, """[{"op":"remove","path":"/nowhere"}]"""))));

    [Fact]
    public void A_patch_that_leaves_a_wrong_record_is_found() => Assert.Equal([ConformanceCodes.AdviceInvalid],
        ConformanceTests.Codes(Advising(_ => DesignPatch.Empty.Set(Pointer.Root, "parts", DesignPatch.Words()).As("no-parts", Why))));

    [Fact]
    public void An_id_that_is_no_slug_is_found() => Assert.Equal([ConformanceCodes.AdviceMalformed],
        ConformanceTests.Codes(Advising(context => Change(context, Reuse.Reusable) with { Id = "Not a slug" })));

    [Fact]
    public void Advice_that_throws_is_found() =>
        Assert.Equal([ConformanceCodes.Throws], ConformanceTests.Codes(Advising(_ => throw new InvalidOperationException("no"))));

    static Reason Why { get; } = Reason.Of("why", "A change.", []);

    static Advisor Advising(Reuse reuse) => Advising(context => Change(context, reuse));

    static Advisor Advising(Func<DeviceContext, DesignChange> suggest) => new(suggest);

    static DesignChange Change(DeviceContext context, Reuse reuse) => context.Case.Record.Joints
        .Aggregate(DesignPatch.Empty, (all, joint) => all.Set(context.Case.At(joint), "reuse", Word.Of(reuse))).As("reuse", Why);

    sealed class Advisor(Func<DeviceContext, DesignChange> suggest) : IDeviceCriterion, IDesignAdvisor
    {
        public CriterionInfo Info => Stub.Good.Info;

        public Outcome Judge(DeviceContext context) => Stub.Good.Judge(context);

        public IEnumerable<DesignChange> Suggest(DeviceContext context) => context.Case.Record.Joints.Count == 0 ? [] : [suggest(context)];
    }
}
