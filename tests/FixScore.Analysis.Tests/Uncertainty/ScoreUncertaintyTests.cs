using FixScore.Analysis.Tests.Comparing;
using FixScore.Analysis.Uncertainty;

namespace FixScore.Analysis.Tests.Uncertainty;

public sealed class ScoreUncertaintyTests
{
    // By hand: 3 x 40 + 1 x (0 to 100), over 4: 30 to 55; the mean of an even spread is 42.5, its quarter 36.25.
    [Fact]
    public void One_open_line_spreads_the_total_evenly()
    {
        var found = Of(40, null, draws: 4_000);
        Assert.Equal(new Interval(30, 55), found.Total);
        Support.Near(42.5m, found.Mean, 0.5m);
        Support.Near(36.25m, found.Quantile(0.25m), 0.6m);
        Assert.InRange(found.Quantile(1), 54.5m, 55m);
    }

    [Fact]
    public void Knowing_the_only_open_line_leaves_nothing_open()
    {
        var line = Assert.Single(Of(40, null).Open);
        Assert.Equal(("root/second", 25m), (line.Path, line.Gain));
        Assert.Equal(((Interval)30, (Interval)55), (line.AtLow, line.AtHigh));
        Assert.Equal("the observation", Assert.Single(line.Missing).What);
    }

    [Fact]
    public void The_line_worth_most_comes_first() => Support.Equal([("root/first", 75m), ("root/second", 25m)], Of(null, null).Open.Select(line => (line.Path, line.Gain)));

    [Fact]
    public void A_fully_known_score_has_one_total()
    {
        var found = Of(40, 80);
        Assert.Empty(found.Open);
        Assert.Equal((50m, 50m, 50m), (found.Mean, found.Quantile(0.01m), found.Quantile(1)));
        Assert.Equal((Interval)50, found.Readings);
    }

    [Fact]
    public void The_same_seed_draws_the_same_totals_and_another_one_others()
    {
        decimal[] Quantiles(long seed) => [.. new[] { 0.1m, 0.5m, 0.9m }.Select(share => ScoreUncertainty.Of(Bench.Document("r", null, 10), Profile, 300, seed).Quantile(share))];
        Assert.Equal(Quantiles(5), Quantiles(5));
        Assert.NotEqual(Quantiles(5), Quantiles(6));
    }

    // Half of the draws of an open line below 30 close the gate, which caps the total at 20.
    [Fact]
    public void Gates_close_draw_by_draw()
    {
        var found = ScoreUncertainty.Of(Bench.Document("r", null, null), Bench.Spread(), 2_000);
        Assert.Contains(found.Open, line => line.Path == "root/device");
        Assert.InRange(found.Quantile(0.29m), 0m, 20m);
    }

    [Fact]
    public void Draws_and_shares_have_their_range()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(1, 1, draws: 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(1, 1).Quantile(0));
    }

    static Profile Profile => Bench.Profile("p", 3, 1);

    static ScoreUncertainty Of(decimal? a, decimal? b, int draws = 200) => ScoreUncertainty.Of(Bench.Document("r", a, b), Profile, draws);
}
