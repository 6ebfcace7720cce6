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
    [InlineData(RouteCost.Steps, FirstTool.NoChange, "559 308 1176 1058 620 396 348 305 523 350")]
    [InlineData(RouteCost.Steps, FirstTool.Change, "554 309 1191 1075 624 397 369 310 530 365")]
    [InlineData(RouteCost.Operations, FirstTool.NoChange, "194 132 177 276 204 151 152 150 156 143")]
    [InlineData(RouteCost.Seconds, FirstTool.NoChange, "225 154 201 289 209 157 168 165 170 149")]
    public void The_least_efforts_that_prove_ways_in_random_records_are_what_they_were(RouteCost cost, FirstTool first, string efforts) => Assert.Equal(efforts, string.Join(' ',
        Bench.Records(1_200, 900_000).Select(each => each.Record).Chunk(120).Select(records => records.Sum(record => LeastEffort(record, new(record.Parts.Last().Id, cost, first))))));

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
