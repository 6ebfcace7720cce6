using FixScore.Records;

namespace FixScore.Testing.Tests;

public sealed class ConformanceTests
{
    [Fact]
    public void A_good_device_criterion_passes() => CriterionConformance.Check(Stub.Good).ThrowIfAny();

    [Fact]
    public void A_good_part_criterion_passes() => CriterionConformance.Check(PartStub.Good).ThrowIfAny();

    [Fact]
    public void A_criterion_that_throws_on_some_record_is_named_with_that_record()
    {
        var findings = CriterionConformance.Check(Stub.Judging(context =>
            context.Case.Record.Id == "minimal" ? throw new InvalidOperationException("no joints") : Stub.Reusable(context)));

        var finding = Assert.Single(findings);
        Assert.Equal((ConformanceCodes.Throws, "minimal"), (finding.Code, finding.Sample));
        Assert.Contains("InvalidOperationException: no joints", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_criterion_that_throws_names_the_part() =>
        Assert.Contains(CriterionConformance.Check(new PartStub(context =>
            context.Part.Role == Roles.Battery ? throw new InvalidOperationException() : PartStub.Unserialised(context))),
            finding => finding.Code == ConformanceCodes.Throws && finding.Text.Contains("'battery'", StringComparison.Ordinal));

    [Fact]
    public void No_outcome_counts_as_throwing() => Assert.Contains(ConformanceCodes.Throws, Codes(Stub.Judging(_ => null!)));

    [Fact]
    public void Points_beyond_the_scale_are_found() =>
        Assert.Contains(ConformanceCodes.OutsideScale, Codes(Stub.Judging(context => Stub.Points(context, 1.01m))));

    [Fact]
    public void Points_that_fit_only_one_scale_are_found() =>
        Assert.Contains(ConformanceCodes.OutsideScale, Codes(Stub.Judging(context => Outcome.Scored(50, Reason.Of("half", "Half.", [])))));

    [Fact]
    public void A_setting_that_a_profile_may_choose_is_tried()
    {
        var option = Options.Count("limit", 3, 0, 9, "1", "Divides.");
        var criterion = new Stub(Stub.Good.Info with { Options = [option] }, context => Stub.Points(context, 1m / context.Get(option)));

        Assert.Contains(ConformanceCodes.Throws, Codes(criterion));
    }

    [Fact]
    public void A_score_without_reasons_is_found() =>
        Assert.Equal([ConformanceCodes.Unexplained], Codes(Stub.Judging(context => Outcome.Scored(context.Scale.Whole))));

    [Fact]
    public void An_unknown_answer_that_misses_nothing_is_found() =>
        Assert.Contains(ConformanceCodes.UnknownWithoutMissing, Codes(Stub.Judging(_ => Outcome.Unknown())));

    [Theory]
    [InlineData("Not A Slug", "Text.")]
    [InlineData("slug", "Text with {nothing}.")]
    public void A_malformed_reason_is_found(string code, string template) =>
        Assert.Equal([ConformanceCodes.ReasonMalformed], Codes(Stub.Judging(context =>
            Outcome.Scored(context.Scale.Whole, Reason.Of(code, template, [])))));

    [Fact]
    public void A_reason_that_points_nowhere_is_found() =>
        Assert.Equal([ConformanceCodes.PointsNowhere], Codes(Stub.Judging(context =>
            Outcome.Scored(context.Scale.Whole, Reason.Of("far", "Far.", [new("/parts/99")])))));

    [Fact]
    public void An_observation_missing_where_none_can_be_is_found() =>
        Assert.Contains(ConformanceCodes.PointsNowhere, Codes(Stub.Judging(_ => Outcome.Unknown(new Missing(new("/parts/0/colour"), "colour")))));

    [Fact]
    public void A_criterion_that_no_sample_reaches_is_found() =>
        Assert.Equal([ConformanceCodes.NeverScored], Codes(Stub.Judging(_ => Outcome.Unknown(new Missing(Pointer.Root, "all")))));

    [Fact]
    public void A_check_without_a_scale_is_refused() =>
        Assert.Throws<ArgumentException>(() => CriterionConformance.Check(Stub.Good, new() { Scales = [] }));

    [Fact]
    public void At_most_three_findings_of_a_code_are_listed() =>
        Assert.Equal(3, CriterionConformance.Check(Stub.Judging(context => throw new InvalidOperationException(context.Case.Record.Id))).Count(
            finding => finding.Code == ConformanceCodes.Throws));

    [Fact]
    public void An_excepted_code_is_not_reported() =>
        Assert.Empty(CriterionConformance.Check(Stub.With(info => info with { Source = "" }), new() { Except = [ConformanceCodes.Undescribed] }));

    [Fact]
    public void Findings_fail_a_test_with_all_of_their_texts()
    {
        var report = CriterionConformance.Check(Stub.With(info => info with { Source = "", RuleVersion = 0 }));

        var thrown = Assert.Throws<ConformanceException>(report.ThrowIfAny);
        Assert.Same(report, thrown.Report);
        Assert.All(report, finding => Assert.Contains(finding.Text, thrown.Message, StringComparison.Ordinal));
        Assert.Equal(2, report.Count);
    }

    internal static IEnumerable<string> Codes(ICriterion criterion, ConformanceOptions? options = null) =>
        CriterionConformance.Check(criterion, options).Select(finding => finding.Code).Distinct();
}
