using FixScore.Criteria.Disassembly;
using FixScore.Disassembly;
using FixScore.Testing;

namespace FixScore.Criteria.Tests.Disassembly;

/// <summary>What holds for any device; own reasoning, no source.</summary>
public sealed class Disassembly_laws
{
    const int Devices = 60;

    static readonly DisassemblyDepthCriterion Depth = new();
    static readonly Gen<TeardownRecord> Records = Gen.Int[1, 100_000].Select(RecordGenerator.Generate);
    static readonly (Option, object)[] OfTheLaw = [(DisassemblyDepthOptions.NotificationSteps, 5m), (DisassemblyDepthOptions.AuthorisationSteps, 5m)];

    public static TheoryData<string> Ids => ["fastener-reuse", "tool-access"];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Less_work_is_judged_no_worse(string id) => Records.Sample(
        record => Assert.All(record.Parts, part => NoWorse(
            Score(Work(id), record, part), Score(Work(id), record, part, (WayOptions.From, WorkFrom.Previous)))),
        iter: Devices);

    [Fact]
    public void Counting_the_first_tool_never_raises_the_score() => Records.Sample(
        record => Assert.All(record.Parts, part => NoWorse(
            Score(Depth, record, part, (WayOptions.FirstTool, FirstTool.Change)), Score(Depth, record, part))),
        iter: Devices);

    [Fact]
    public void What_the_maker_demands_never_raises_the_score() => Records.Sample(
        record => Assert.All(record.Parts, part => NoWorse(Score(Depth, record, part, OfTheLaw), Score(Depth, record, part))),
        iter: Devices);

    [Fact]
    public void Not_knowing_the_demands_only_widens() => Records.Sample(
        record => Assert.All(record.Parts, part => Assert.True(
            Score(Depth, record with { Parts = [.. record.Parts.Select(each => each with { Serialised = null })] }, part, OfTheLaw)
                .Contains(Score(Depth, record, part, OfTheLaw)))),
        iter: Devices);

    // Unknown tools are read as one tool at most: the law holds where no more were used, and no heat.
    [Fact]
    public void Not_knowing_the_tool_of_an_operation_only_widens_the_depth() => Gen.Select(Records, Gen.Int[0, 7]).Sample(
        (record, index) =>
        {
            if (record.Operations.Count == 0) return;
            var chosen = record.Operations[index % record.Operations.Count];
            if (chosen.OrTools.Prepend(chosen.Tools.AsArray()).Any(tools => tools.Length > 1 || tools.Contains("warm-plate"))) return;
            var less = record with { Operations = [.. record.Operations.Select(each => each.Id == chosen.Id ? each with { Tools = default, OrTools = [] } : each)] };
            Assert.All(record.Parts, part => Assert.True(Score(Depth, less, part).Contains(Score(Depth, record, part))));
        },
        iter: 4 * Devices);

    static IPartCriterion Work(string id) => id == "fastener-reuse" ? new FastenerReuseCriterion() : new ToolAccessCriterion();

    static void NoWorse(Interval worse, Interval better) => Assert.True(worse.Low <= better.Low && worse.High <= better.High);

    static Interval Score(IPartCriterion criterion, TeardownRecord record, Part part, params ReadOnlySpan<(Option, object)> options)
    {
        var outcome = criterion.Judge(Contexts.For(criterion, new RecordCase(record), part.Id, Contexts.Percent, options));
        return outcome.Known();
    }
}
