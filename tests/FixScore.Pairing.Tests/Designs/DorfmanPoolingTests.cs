using FixScore.Pairing.Designs;
using static FixScore.Pairing.Tests.Designs.Outcomes;

namespace FixScore.Pairing.Tests.Designs;

public sealed class DorfmanPoolingTests
{
    // Table of best group sizes, Dorfman 1943 (from memory); costs recomputed by direct minimisation. At 7 % the table has
    // size 5, minimisation 4; both cost 50 % when rounded.
    [Theory]
    [InlineData("0.01", 11, "0.195571")]
    [InlineData("0.02", 8, "0.274237")]
    [InlineData("0.03", 6, "0.333695")]
    [InlineData("0.04", 6, "0.383909")]
    [InlineData("0.05", 5, "0.426219")]
    [InlineData("0.06", 5, "0.466096")]
    [InlineData("0.07", 4, "0.501948")]
    [InlineData("0.08", 4, "0.533607")]
    [InlineData("0.09", 4, "0.564250")]
    [InlineData("0.10", 4, "0.593900")]
    [InlineData("0.12", 4, "0.650305")]
    [InlineData("0.13", 3, "0.674830")]
    [InlineData("0.15", 3, "0.719208")]
    [InlineData("0.20", 3, "0.821333")]
    [InlineData("0.25", 3, "0.911458")]
    [InlineData("0.30", 3, "0.990333")]
    public void Best_size_and_cost(string prevalence, int size, string cost)
    {
        var share = decimal.Parse(prevalence, System.Globalization.CultureInfo.InvariantCulture);
        var expected = decimal.Parse(cost, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(size, DorfmanPooling.BestGroupSize(share));
        Assert.Equal(expected, DorfmanPooling.CostPerPart(share, size), 6);
    }

    // c(4) and c(5) at 7 %, recomputed by direct minimisation.
    [Fact]
    public void At_seven_per_cent_four_is_better_than_the_five_of_the_table()
    {
        Assert.Equal(0.501948m, DorfmanPooling.CostPerPart(0.07m, 4), 6);
        Assert.Equal(0.504312m, DorfmanPooling.CostPerPart(0.07m, 5), 6);
    }

    // The threshold 1 − 3^(−1/3) = 0.306638725649…, recomputed.
    [Theory]
    [InlineData("0.306638725649", 3)]
    [InlineData("0.306638725650", 1)]
    [InlineData("0.5", 1)]
    [InlineData("1", 1)]
    public void Groups_save_nothing_beyond_the_threshold(string prevalence, int size) =>
        Assert.Equal(size, DorfmanPooling.BestGroupSize(decimal.Parse(prevalence, System.Globalization.CultureInfo.InvariantCulture)));

    [Fact]
    public void The_size_found_is_the_best_of_all()
    {
        for (var prevalence = 0.001m; prevalence <= 1; prevalence += 0.001m)
        {
            var best = Enumerable.Range(1, 100).MinBy(size => DorfmanPooling.CostPerPart(prevalence, size));
            Assert.Equal(best, DorfmanPooling.BestGroupSize(prevalence));
        }
    }

    // Whole batches, recomputed exactly.
    [Theory]
    [InlineData(60, "0.05", 5, "25.573144")]
    [InlineData(24, "0.1", 4, "14.2536")]
    [InlineData(7, "0", 3, "3")]
    [InlineData(4, "1", 3, "5")]
    public void Expected_trials_of_a_batch(int parts, string prevalence, int size, string trials) => Assert.Equal(
        decimal.Parse(trials, System.Globalization.CultureInfo.InvariantCulture),
        DorfmanPooling.ExpectedTrials(parts, decimal.Parse(prevalence, System.Globalization.CultureInfo.InvariantCulture), size), 6);

    [Fact]
    public void The_first_stage_swaps_groups() =>
        Assert.Equal(["p1 p2 p3", "p4 p5 p6", "p7"], DorfmanPooling.FirstStage(Parts(7), 3).Trials.Select(trial => trial.Joined()));

    [Fact]
    public void Prevalences_out_of_range_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => DorfmanPooling.BestGroupSize(0m));
        Assert.Throws<ArgumentOutOfRangeException>(() => DorfmanPooling.BestGroupSize(1.1m));
        Assert.Throws<ArgumentOutOfRangeException>(() => DorfmanPooling.CostPerPart(0.1m, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => DorfmanPooling.CostPerPart(-0.1m, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => DorfmanPooling.CostPerPart(1.1m, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => DorfmanPooling.ExpectedTrials(-1, 0.1m, 3));
    }
}
