using FixScore.Records;
using FixScore.Testing;

namespace FixScore.Tests.Writing;

/// <summary>Records made in code are checked as if they had been read.</summary>
public sealed class RecordDocumentTests
{
    [Fact]
    public void A_record_made_in_code_has_the_digest_of_its_written_form()
    {
        var document = RecordDocument.Of(SampleRecords.GluedTablet);
        Assert.Same(SampleRecords.GluedTablet, document.Record);
        Assert.Equal(RecordFile.Read(RecordFile.ToJson(SampleRecords.GluedTablet)).OrThrow().Digest, document.Digest);
    }

    [Fact]
    public void All_that_is_wrong_comes_at_once_without_a_place_in_a_text()
    {
        var record = SampleRecords.Minimal with
        {
            Id = "No Slug",
            Joints = [new Joint { Id = "j", Joins = ["nothing"], Kind = JointKind.Screw, Count = new(2, 1) }],
            Observations = [new Observation { Name = "acme.n", Number = 0.12345678901234567m }],
        };
        var failure = Assert.Throws<InvalidDocumentException>(() => RecordDocument.Of(record));
        Assert.Equal(
            ["wrong-text /id", "too-few /joints/0/joins", "id-unknown /joints/0/joins/0", "range-reversed /joints/0/count", "number-range /observations/0/value"],
            failure.Problems.Select(problem => $"{problem.Problem.Code} {problem.Problem.At}"));
        Assert.All(failure.Problems, problem => Assert.Equal((0, 0, ""), (problem.Line, problem.Column, problem.Source)));
    }

    [Fact]
    public void Lists_that_were_never_made_are_empty() =>
        Assert.NotEmpty(RecordDocument.Of(SampleRecords.Minimal with { Swaps = [new SwapTrial { Id = "t", Host = UnitOf(SampleRecords.Minimal), Installed = default, Checks = default }] }).Warnings);

    [Fact]
    public void Texts_and_lists_that_are_missing_are_told() => Assert.Equal(
        ["wrong-type /device/maker", "missing-member /assessment"],
        Told(SampleRecords.Minimal with { Device = SampleRecords.Minimal.Device with { Maker = null! }, Assessment = SampleRecords.Minimal.Assessment with { Units = default } }));

    [Fact]
    public void Half_a_surrogate_pair_is_told() => Assert.Equal(
        ["lone-surrogate "], Told(SampleRecords.Minimal with { Findings = [new Remark { Topic = "x", Text = "\ud83d" }] }));

    [Fact]
    public void Conditions_without_end_are_told()
    {
        Condition nested = new Condition.Done("o");
        for (var i = 0; i < 100_000; i++) nested = new Condition.AllOf([nested]);
        Assert.Equal(["json.too-deep "], Told(SampleRecords.Minimal with { Milestones = [new Milestone { Id = "m", When = [nested] }] }));
    }

    [Fact]
    public void Registered_checks_run_when_nothing_else_is_wrong()
    {
        var document = RecordDocument.Of(SampleRecords.Minimal, Catalogue.Of(new Checking()));
        Assert.Equal("always", Assert.Single(document.Warnings).Problem.Code);
    }

    static string[] Told(TeardownRecord record) =>
        [.. Assert.Throws<InvalidDocumentException>(() => RecordDocument.Of(record)).Problems.Select(problem => $"{problem.Problem.Code} {problem.Problem.At}")];

    static string UnitOf(TeardownRecord record) => record.Assessment.Units[0].Id;

    sealed class Checking : IPlugin, IRecordCheck
    {
        public string Id => "always";

        public void Register(IPluginRegistry registry) => registry.Add(this);

        public IEnumerable<Problem> Check(TeardownCase source) => [Problem.Of(Severity.Warning, Pointer.Root, "always", "Always.", "Nothing.")];
    }
}
