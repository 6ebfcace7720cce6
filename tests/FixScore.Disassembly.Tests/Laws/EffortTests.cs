using FixScore.Benchmarks.RouteProofs;
using FixScore.Records;

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
        Assert.Equal(efforts, string.Join(' ', Enum.GetValues<RouteCost>().Select(cost => LeastEffort(DeviceInstance.Of(8, device).Record, new(DeviceInstance.Of(8, device).Deepest, cost)))));

    [Theory]
    [InlineData(500, "10..24 10..24 11..24 24..24 24..24 24..24 849..24 849..24 849..24")]
    [InlineData(507, "6..16 7..16 8..16 15..15 15..15 15..15 265..15 265..15 265..15")]
    [InlineData(514, "5..11 5..11 6..11 11..11 11..11 11..11 315..11 315..11 315..11")]
    [InlineData(525, "9..21 10..21 11..21 21..21 21..21 21..21 611..21 611..21 611..21")]
    public void What_a_search_cut_short_finds_and_proves_is_what_it_was(int device, string bounds) => Assert.Equal(bounds, string.Join(' ',
        from cost in Enum.GetValues<RouteCost>()
        from effort in (int[])[1, 4, 16]
        let made = DeviceInstance.Of(8, device)
        let route = Find(made.Record, new(made.Deepest, cost), effort)
        select FormattableString.Invariant($"{route.LowerBound}..{route.Way!.Operations.Count()}")));

    // Small records with every case, which generated devices have not: several tools at once, unknown ones, damage, choices.
    [Theory]
    [InlineData(0, 559, 554, 194, 225)]
    [InlineData(1, 308, 309, 132, 154)]
    [InlineData(2, 1176, 1191, 177, 201)]
    [InlineData(3, 1058, 1075, 276, 289)]
    [InlineData(4, 620, 624, 204, 209)]
    [InlineData(5, 396, 397, 151, 157)]
    [InlineData(6, 348, 369, 152, 168)]
    [InlineData(7, 305, 310, 150, 165)]
    [InlineData(8, 667, 674, 253, 267)]
    [InlineData(9, 357, 372, 149, 155)]
    public void The_least_efforts_that_prove_ways_in_random_records_are_what_they_were(int block, int steps, int firstCounts, int operations, int seconds)
    {
        var records = Bench.Records(120, 900_000 + (120 * block)).Select(each => each.Record).ToArray();
        Assert.Equal((steps, firstCounts, operations, seconds), (Sum(RouteCost.Steps), Sum(RouteCost.Steps, FirstTool.Change), Sum(RouteCost.Operations), Sum(RouteCost.Seconds)));

        int Sum(RouteCost cost, FirstTool first = FirstTool.NoChange) => records.Sum(record => LeastEffort(record, new(record.Parts.Last().Id, cost, first)));
    }

    static int LeastEffort(TeardownRecord record, RouteQuery query)
    {
        var enough = 1;
        while (!Find(record, query, enough).IsOptimal) enough *= 2;
        var (least, most) = (enough / 2, enough);
        while (most - least > 1)
        {
            var middle = (least + most) / 2;
            if (Find(record, query, middle).IsOptimal) most = middle;
            else least = middle;
        }
        return most;
    }

    static Route Find(TeardownRecord record, RouteQuery query, int effort) => new RecordCase(record).Derive<Route, RouteQuery>(query with { Effort = effort });
}
