using FixScore.Benchmarks.RouteProofs;
using FixScore.Disassembly.Tests.Oracle;

namespace FixScore.Disassembly.Tests.Laws;

/// <summary>Ways in generated devices, followed operation by operation; and what a search says that was not allowed to finish.</summary>
public sealed class DeviceTests
{
    [Fact]
    public void Every_way_can_be_followed_to_its_end_and_not_a_single_operation_less() => OnAll((device, source) =>
    {
        var simulator = new Simulator(device.Record);
        var (undone, removed) = simulator.Freedom(simulator.Sides.Group(device.Deepest));
        foreach (var cost in Enum.GetValues<RouteCost>())
        {
            var state = State.Start;
            foreach (var id in source.RouteTo(device.Deepest, cost).Way!.Operations)
            {
                var operation = Array.FindIndex(simulator.Operations, each => each.Id == id);
                Assert.False(state.Undone.Holds(undone) && state.Removed.Holds(removed));
                Assert.True(simulator.CanBeDone(state, operation));
                state = simulator.After(state, operation);
            }
            Assert.True(state.Undone.Holds(undone) && state.Removed.Holds(removed));
        }
    });

    [Fact]
    public void A_search_cut_short_says_so_and_its_bounds_hold()
    {
        var cutShort = 0;
        OnAll((device, source) =>
        {
            var proven = source.RouteTo(device.Deepest);
            foreach (var effort in new[] { 1, 10, 100 })
            {
                var route = source.Derive<Route, RouteQuery>(new(device.Deepest, effort: effort));
                Assert.Equal(Reachability.Reachable, route.Reachability);
                Assert.True(route.LowerBound <= proven.Steps!.Value.Low && route.Steps!.Value.Low >= proven.Steps.Value.Low);
                if (route.IsOptimal) Assert.Equal(route.Steps.Value.Low, route.LowerBound);
                if (!route.IsOptimal) cutShort++;
            }
        });
        Assert.True(cutShort > 10);
    }

    // With unknown tools both ends of the steps are searched, and either search may be cut short.
    [Theory]
    [InlineData(900_000)]
    [InlineData(900_300)]
    [InlineData(900_600)]
    [InlineData(900_900)]
    public void A_search_cut_short_in_a_random_record_never_tells_what_is_not_so(int firstSeed)
    {
        foreach (var (record, _) in Bench.Records(300, firstSeed))
            foreach (var effort in new[] { 1, 2, 5 })
                AssertHolds(new RecordCase(record), record.Parts.Last().Id, effort);
    }

    [Fact]
    public void A_search_for_the_least_damage_cut_short_tells_what_is_proven_and_what_is_open()
    {
        var record = Bench.Records(1, 900_982).Single().Record;
        var route = new RecordCase(record).Derive<Route, RouteQuery>(new(record.Parts.Last().Id, effort: 1));
        Assert.Equal((Reachability.Unreachable, false, "route.damage-open"), (route.Reachability, route.IsOptimal, route.Why?.Code));
        Assert.Equal("'p5' cannot be freed without damage; no way with damage was found among 1 states, and whether there is one is open.", route.Why!.Text);
    }

    static void AssertHolds(RecordCase source, string part, int effort)
    {
        var (proven, cut) = (source.RouteTo(part), source.Derive<Route, RouteQuery>(new(part, effort: effort)));
        if (cut.Why?.Code == "route.damage-open") Assert.Equal(Reachability.Unreachable, proven.Reachability);
        else Assert.True(cut.Why?.Code == "route.too-much-work" || (cut.Reachability, cut.Why?.Code) == (proven.Reachability, proven.Why?.Code));
        if (cut.Steps is not { } steps) return;
        Assert.True(steps.Low >= proven.Steps!.Value.Low && steps.High >= proven.Steps.Value.High && cut.LowerBound <= proven.Steps.Value.Low);
        if (cut.IsOptimal) Assert.Equal(proven.Steps, steps);
    }

    static void OnAll(Action<DeviceInstance, RecordCase> check)
    {
        for (var seed = 500; seed < 540; seed++)
        {
            var device = DeviceInstance.Of(8, seed);
            if (device.Record.Operations.Count < 32) check(device, new(device.Record));
        }
    }
}
