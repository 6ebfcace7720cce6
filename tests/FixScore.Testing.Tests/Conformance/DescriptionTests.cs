namespace FixScore.Testing.Tests;

public sealed class DescriptionTests
{
    public static TheoryData<string, Func<CriterionInfo, CriterionInfo>> Faults => new()
    {
        { ConformanceCodes.IdNotSlug, info => info with { Id = "Acme Reuse" } },
        { ConformanceCodes.RuleVersion, info => info with { RuleVersion = 0 } },
        { ConformanceCodes.Undescribed, info => info with { Title = "" } },
        { ConformanceCodes.Undescribed, info => info with { Measures = " " } },
        { ConformanceCodes.Undescribed, info => info with { Unit = "" } },
        { ConformanceCodes.Undescribed, info => info with { Source = "" } },
        { ConformanceCodes.Undescribed, info => info with { Reads = [] } },
        { ConformanceCodes.Undescribed, info => info with { Reads = default } },
        { ConformanceCodes.ReadsUnknownMember, info => info with { Reads = ["joints[].colour"] } },
        { ConformanceCodes.OptionUndocumented, info => info with { Options = [.. info.Options, Options.Flag("flag", false, "")] } },
        { ConformanceCodes.OptionUndocumented, info => info with { Options = [.. info.Options, Options.Flag("Not-camel", false, "Text.")] } },
        { ConformanceCodes.OptionUndocumented, info => info with { Options = [.. info.Options, Options.NoLevel] } },
        { ConformanceCodes.DefaultOutsideScale, info => info with { Options = [.. info.Options, Options.Bands("more", Bands.AtMost((1, 5)), "mm", "Text.")] } },
        { ConformanceCodes.DefaultOutsideScale, info => info with { Options = [.. info.Options, Options.Levels("words", Levels.Of(("bad", -1)), "Text.")] } },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_in_what_it_says_of_itself_is_the_only_finding(string code, Func<CriterionInfo, CriterionInfo> plant) =>
        Assert.Equal([code], ConformanceTests.Codes(Stub.With(plant)));

    [Fact]
    public void Observations_of_others_may_be_read_under_any_name() =>
        Assert.Empty(CriterionConformance.Check(Stub.With(info => info with { Reads = [.. info.Reads, "observations/acme.latch"] })));

    [Fact]
    public void Info_that_is_another_object_at_every_call_is_found() =>
        Assert.Equal([ConformanceCodes.InfoNotSame], ConformanceTests.Codes(new Restless()));

    [Fact]
    public void A_criterion_that_judges_nothing_is_found() =>
        Assert.Contains(ConformanceCodes.JudgesNothing, ConformanceTests.Codes(new Idle(Stub.Good.Info)));

    [Fact]
    public void Info_that_is_not_there_ends_the_check() =>
        Assert.Equal([ConformanceCodes.Undescribed], ConformanceTests.Codes(new Idle(null!)));

    sealed class Restless : IDeviceCriterion
    {
        public CriterionInfo Info => Stub.Good.Info with { };

        public Outcome Judge(DeviceContext context) => Stub.Reusable(context);
    }

    sealed class Idle(CriterionInfo info) : ICriterion
    {
        public CriterionInfo Info => info;
    }
}
