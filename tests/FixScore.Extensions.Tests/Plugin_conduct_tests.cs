using System.Text.Json.Nodes;
using FixScore.Tests.Samples;

namespace FixScore.Extensions.Tests;

/// <summary>What a plugin does wrong while it judges stays with its leaf; what never ends ends the run.</summary>
public sealed class Plugin_conduct_tests
{
    // Long enough for a busy machine to do what returns.
    static readonly TimeSpan Short = TimeSpan.FromSeconds(3);

    [Theory]
    [InlineData("acme.throws", "criterion-threw")]
    [InlineData("acme.gives-up", "criterion-threw")]
    [InlineData("acme.says-nothing", "criterion-threw")]
    [InlineData("acme.leaves-open", "outcome-malformed")]
    [InlineData("acme.half-character", "outcome-malformed")]
    [InlineData("acme.names-twice", "outcome-malformed")]
    [InlineData("acme.points-nowhere", "outcome-malformed")]
    [InlineData("acme.lacks-text", "outcome-malformed")]
    [InlineData("acme.leaves-scale", "score-left-scale")]
    public void A_criterion_that_breaks_the_rules_is_named_and_counts_as_the_whole_scale_or_ends_the_run(string criterion, string code)
    {
        var catalogue = Bench.With(SamplePlugins.Unruly);

        var score = Bench.Score(catalogue, ScoringMode.Tolerant, criterion, "acme.does-nothing");
        Assert.Equal(new Interval(5m, 10m), score.Total);
        var fault = Assert.Single(score.Faults);
        Assert.Equal((criterion, "Acme.Unruly", code, "total/leaf-0"), (fault.Criterion, fault.Plugin, fault.Code, fault.Node));

        Assert.Equal(code, Assert.Single(Assert.Throws<CriterionFaultException>(() => Bench.Score(catalogue, ScoringMode.Strict, criterion, "acme.does-nothing")).Faults).Code);
    }

    [Theory]
    [InlineData(ScoringMode.Strict)]
    [InlineData(ScoringMode.Tolerant)]
    public void A_criterion_that_never_returns_ends_the_run_in_every_mode(ScoringMode mode)
    {
        var late = Assert.Throws<PluginTimeoutException>(() => Bench.Score(Impatient(), mode, "acme.does-nothing", "acme.never-returns"));
        Assert.Equal(("Acme.Unruly", "the criterion acme.never-returns", Short), (late.Plugin, late.What, late.Limit));
    }

    [Fact]
    public void A_stream_of_records_ends_as_well()
    {
        var catalogue = Impatient();
        var lines = new MemoryStream([.. Line(), (byte)'\n', .. Line()]);
        Assert.Throws<PluginTimeoutException>(() =>
            RecordLines.Score(lines, Bench.Profile(catalogue, "acme.never-returns"), line => line, catalogue, ScoringMode.Tolerant).ToArray());
    }

    [Fact]
    public void What_calls_allocate_is_counted_when_asked()
    {
        var meter = new PluginMeter();
        var catalogue = new CatalogueBuilder().AddFile(new(SamplePlugins.Unruly), Workspace.Trusting with { Meter = meter }).Build();
        for (var i = 0; i < 3; i++) Bench.Score(catalogue, ScoringMode.Strict, "acme.allocates");

        var measure = meter.Measures.Single(each => each.What == "the criterion acme.allocates");
        Assert.Equal(("Acme.Unruly", 3), (measure.Plugin, measure.Calls));
        Assert.InRange(measure.Bytes, 3_000_000, 3_100_000);
    }

    [Fact]
    public void Many_threads_at_once_get_the_same_score()
    {
        var catalogue = Bench.With(SamplePlugins.Unruly, SamplePlugins.Marks);
        var totals = Enumerable.Range(0, 40).AsParallel().WithDegreeOfParallelism(8).Select(_ => Bench.Score(catalogue, ScoringMode.Strict, "acme.does-nothing", "acme.marks").Total).ToArray();
        Assert.Equal([new Interval(6.5m, 6.5m)], totals.Distinct());
    }

    static Catalogue Impatient() => new CatalogueBuilder().AddFile(new(SamplePlugins.Unruly), Workspace.Trusting with { Limit = Short }).Build();

    static byte[] Line() => System.Text.Encoding.UTF8.GetBytes(JsonNode.Parse(File.ReadAllBytes(Workspace.Record))!.ToJsonString());
}
