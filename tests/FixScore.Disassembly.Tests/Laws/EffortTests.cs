using FixScore.Benchmarks.RouteProofs;

namespace FixScore.Disassembly.Tests.Laws;

/// <summary>
/// How many states a proof takes on generated devices. No source: counted once and written down, so that a change which makes searches longer, though not wrong, is seen. Fewer is
/// better; write down the new number then.
/// </summary>
public sealed class EffortTests
{
    [Theory]
    [InlineData(500, "118 1 25")]
    [InlineData(503, "16 1 1")]
    [InlineData(507, "64 1 1")]
    [InlineData(511, "73 1 1")]
    [InlineData(514, "18 1 12")]
    [InlineData(520, "89 1 21")]
    [InlineData(525, "83 1 1")]
    [InlineData(533, "272 1 91")]
    public void The_least_effort_that_proves_a_way_is_what_it_was(int device, string efforts) =>
        Assert.Equal(efforts, string.Join(' ', Enum.GetValues<RouteCost>().Select(cost => LeastEffort(DeviceInstance.Of(8, device), cost))));

    [Theory]
    [InlineData(500, "10..24 10..24 11..24 24..24 24..24 24..24 849..24 849..24 849..24")]
    [InlineData(507, "6..16 7..16 8..16 15..15 15..15 15..15 265..15 265..15 265..15")]
    [InlineData(514, "5..11 5..11 6..11 11..11 11..11 11..11 315..11 315..11 315..11")]
    [InlineData(525, "9..21 10..21 11..21 21..21 21..21 21..21 611..21 611..21 611..21")]
    public void What_a_search_cut_short_finds_and_proves_is_what_it_was(int device, string bounds) => Assert.Equal(bounds, string.Join(' ',
        from cost in Enum.GetValues<RouteCost>()
        from effort in (int[])[1, 4, 16]
        let route = Find(DeviceInstance.Of(8, device), cost, effort)
        select FormattableString.Invariant($"{route.LowerBound}..{route.Way!.Operations.Count()}")));

    static int LeastEffort(DeviceInstance device, RouteCost cost)
    {
        var enough = 1;
        while (!Find(device, cost, enough).IsOptimal) enough *= 2;
        var (least, most) = (enough / 2, enough);
        while (most - least > 1)
        {
            var middle = (least + most) / 2;
            if (Find(device, cost, middle).IsOptimal) most = middle;
            else least = middle;
        }
        return most;
    }

    static Route Find(DeviceInstance device, RouteCost cost, int effort) => new RecordCase(device.Record).Derive<Route, RouteQuery>(new(device.Deepest, cost, effort: effort));
}
