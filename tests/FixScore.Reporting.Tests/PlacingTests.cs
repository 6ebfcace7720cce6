using CsCheck;

namespace FixScore.Reporting.Tests;

public sealed class PlacingTests
{
    static readonly Gen<Interval[]> Totals = Gen.Select(Gen.Int[0, 20], Gen.Int[0, 20]).Select((a, b) => new Interval(Math.Min(a, b), Math.Max(a, b))).Array[1, 6];

    static IReadOnlyList<Placing> Ranked(params Interval[] totals) =>
        Placing.Of(totals.Select((total, index) => Bench.Demo[0].With($"r{index}", total)));

    static (string, int, int, Standing) Told(Placing each) => (each.Judgement.Record.Id, each.Best, each.Worst, each.Next);

    [Fact]
    public void Totals_that_do_not_overlap_have_settled_places() => Assert.Equal(
        [("r1", 1, 1, Standing.Above), ("r0", 2, 2, Standing.Last)], Ranked(new(10, 20), new(21, 30)).Select(Told));

    [Fact]
    public void Totals_that_overlap_share_a_range_of_places() => Assert.Equal(
        [("r1", 1, 2, Standing.Open), ("r0", 1, 2, Standing.Above), ("r2", 3, 3, Standing.Last)], Ranked(new(10, 20), new(15, 30), new(1, 2)).Select(Told));

    [Fact]
    public void A_wide_total_is_open_against_all_it_spans() => Assert.Equal(
        [("r1", 1, 2, Standing.Open), ("r0", 1, 3, Standing.Open), ("r2", 2, 3, Standing.Last)], Ranked(new(0, 100), new(60, 61), new(40, 41)).Select(Told));

    [Fact]
    public void Equal_exact_totals_are_level_and_share_the_place() => Assert.Equal(
        [("r0", 1, 1, Standing.Level), ("r1", 1, 1, Standing.Above), ("r2", 3, 3, Standing.Last)], Ranked(50, 50, 40).Select(Told));

    [Fact]
    public void Equal_intervals_are_not_level_but_open() => Assert.Equal(
        [("r0", 1, 2, Standing.Open), ("r1", 1, 2, Standing.Last)], Ranked(new(10, 20), new(10, 20)).Select(Told));

    [Fact]
    public void The_smallest_exact_difference_decides() => Assert.Equal(
        [("r1", 1, 1, Standing.Above), ("r0", 2, 2, Standing.Last)], Ranked(50m, 50.00000000000000000001m).Select(Told));

    // Whatever values the totals turn out to have, the place counted from them lies within the range.
    [Fact]
    public void Places_hold_whatever_the_totals_turn_out_to_be() => Gen.Select(Totals, Gen.Int[0, 1000]).Sample((totals, seed) =>
    {
        var values = totals.Select((total, index) => total.Low + (total.High - total.Low) * ((seed * (index + 3)) % 11) / 10m).ToArray();
        foreach (var placing in Ranked(totals))
        {
            var own = values[int.Parse(placing.Judgement.Record.Id[1..], System.Globalization.CultureInfo.InvariantCulture)];
            Assert.InRange(1 + values.Count(value => value > own), placing.Best, placing.Worst);
        }
    });

    [Fact]
    public void The_order_given_does_not_matter() => Gen.Select(Totals, Gen.Int[0, 5]).Sample((totals, turn) =>
    {
        var judgements = totals.Select((total, index) => Bench.Demo[0].With($"r{index}", total)).ToArray();
        var turned = judgements.Skip(turn % judgements.Length).Concat(judgements.Take(turn % judgements.Length));
        Assert.Equal(Placing.Of(judgements).Select(Told), Placing.Of(turned).Select(Told));
    });
}
