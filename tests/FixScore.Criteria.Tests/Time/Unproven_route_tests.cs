using FixScore.Criteria.Cost;
using FixScore.Criteria.Safety;
using FixScore.Criteria.Time;
using FixScore.Disassembly;
using FixScore.Testing;

namespace FixScore.Criteria.Tests.Time;

/// <summary>Facts along routes of which a search with little effort did not prove that they are the fastest.</summary>
public sealed class Unproven_route_tests
{
    static readonly RecordCase Source = new(Layers().Build());
    static readonly Route Unproven = Searched();

    [Fact]
    public void Observed_time_opens_down_to_the_proven_bound()
    {
        var (found, bound) = (Unproven.Seconds!.Value, Unproven.LowerBound!.Value);
        Assert.True(bound < found.Low);
        Assert.Equal(new Interval(bound, found.High), DisassemblyTimeFacts.Of(Source.Record, Unproven, Criteria.Time.Waiting.Count).Observed);
        Assert.Equal<decimal?>(0, DisassemblyTimeFacts.Of(Source.Record, Unproven, Criteria.Time.Waiting.LeaveOutRecorded).Observed?.Low);
    }

    [Fact]
    public void An_estimate_opens_down_to_nothing() =>
        Assert.Equal(0, DisassemblyTimeFacts.Of(Source.Record, Unproven, Criteria.Time.Waiting.Count).Estimated.Min);

    [Fact]
    public void Labour_and_consumables_have_no_upper_end()
    {
        var context = Contexts.For(new RepairCostRatioCriterion(), Source, "target");
        var facts = RepairCostRatioFacts.Of(context, Unproven, new(100, "EUR", true));
        Assert.Equal((null, null, null), (facts.Seconds.Max, facts.Reassembly.Max, facts.Consumables.Max));
    }

    [Fact]
    public void Any_hazard_may_be_met()
    {
        var facts = HazardExposureFacts.Of(Source, Source.Record.Parts[^1], Unproven);
        Assert.True(facts.IsOpen);
        Assert.Equal(new Interval(0, 11), facts.Count(false));
    }

    static Route Searched()
    {
        // The least effort that finds a route at all.
        return Enumerable.Range(1, 2000)
            .Select(effort => Source.Derive<Route, RouteQuery>(new("target", RouteCost.Seconds, effort: effort)))
            .First(route => route.Reachability == Reachability.Reachable && !route.IsOptimal && route.LowerBound < route.Seconds?.Low);
    }

    /// <summary>Ten layers, each with two ways off, one of which needs a key that lies elsewhere.</summary>
    static RecordBuilder Layers()
    {
        var builder = new RecordBuilder().Part("frame").Tool("hook", ToolClass.Basic).Tool("pin", ToolClass.Basic);
        for (var i = 0; i < 10; i++)
            builder.Part($"layer-{i}").Joint($"clip-{i}", [$"layer-{i}", "frame"], JointKind.SnapFit)
                .Operation($"slow-{i}", OperationAction.Unclip, [i % 2 == 0 ? "hook" : "pin"], [$"clip-{i}"], [$"layer-{i}"], seconds: 60 + i)
                .Operation($"key-{i}", OperationAction.Slide, [i % 3 == 0 ? "pin" : "hook"], [], [], seconds: 10 + 7 * i % 5)
                .Operation($"fast-{i}", OperationAction.Unclip, [i % 3 == 0 ? "hook" : "pin"], [$"clip-{i}"], [$"layer-{i}"], [new Condition.Done($"key-{(i + 3) % 10}")], 30 + 3 * i % 7);
        return builder.Part("target").Joint("last", ["target", "frame"], JointKind.SnapFit, joint => joint with { Under = [.. Enumerable.Range(0, 10).Select(i => $"layer-{i}")] })
            .Operation("pull", OperationAction.Pull, [], ["last"], ["target"], seconds: 5);
    }
}
