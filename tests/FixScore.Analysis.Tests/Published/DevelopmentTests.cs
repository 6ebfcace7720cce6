using FixScore.Analysis.Aggregating;
using FixScore.Analysis.Normalising;

namespace FixScore.Analysis.Tests;

/// <summary>Human Development Index 2014: data and index of the Human Development Report 2015, goalposts of the technical notes of UNDP.</summary>
public sealed class DevelopmentTests
{
    [Theory]
    [InlineData("Norway", 81.6, 17.5, 12.6, 64992, 0.944)]
    [InlineData("Australia", 82.4, 20.2, 13.0, 42261, 0.935)]
    [InlineData("Switzerland", 83.0, 15.8, 12.8, 56431, 0.930)]
    [InlineData("Singapore", 83.0, 15.4, 10.6, 76628, 0.912)]
    [InlineData("Japan", 83.5, 15.3, 11.5, 36927, 0.891)]
    [InlineData("Qatar", 78.2, 13.8, 9.1, 123124, 0.850)]
    [InlineData("Costa Rica", 79.4, 13.9, 8.4, 13413, 0.766)]
    [InlineData("China", 75.8, 13.1, 7.5, 12547, 0.727)]
    [InlineData("India", 68.0, 11.7, 5.4, 5497, 0.609)]
    [InlineData("Kenya", 61.6, 11.0, 6.3, 2762, 0.548)]
    [InlineData("Niger", 61.4, 5.4, 1.5, 908, 0.348)]
    public void The_published_index_comes_out_of_rounded_data(string country, double life, double expected, double mean, double income, double index)
    {
        var score = Of(Aggregate.WeightedGeometric, (life, expected, mean, income));
        Assert.True(Math.Abs(score[0] - (decimal)index) <= 0.0011m, $"{country}: {score[0]}");
    }

    // Rows of the Human Development Report 2015; both means recomputed apart.
    [Fact]
    public void Niger_is_behind_the_Central_African_Republic_only_when_dimensions_do_not_make_up_for_each_other()
    {
        (double, double, double, double)[] rows = [(61.4, 5.4, 1.5, 908), (50.7, 7.2, 4.2, 581)];
        var geometric = Of(Aggregate.WeightedGeometric, rows);
        var arithmetic = Of(Aggregate.WeightedArithmetic, rows);
        Support.Near(0.348839m, geometric[0], 5e-7m);
        Support.Near(0.349476m, geometric[1], 5e-7m);
        Support.Near(0.390054m, arithmetic[0], 5e-7m);
        Support.Near(0.359367m, arithmetic[1], 5e-7m);
    }

    static decimal[] Of(Aggregate rule, params (double Life, double Expected, double Mean, double Income)[] rows)
    {
        var data = Support.Table([.. rows.Select(row => System.Collections.Immutable.ImmutableArray.Create((decimal)row.Life, (decimal)row.Expected, (decimal)row.Mean, (decimal)Math.Log(row.Income)))]);
        var shares = Normaliser.Apply(data,
            [Normalisation.Goalposts(20, 85), Normalisation.Goalposts(0, 18), Normalisation.Goalposts(0, 15), Normalisation.Goalposts((decimal)Math.Log(100), (decimal)Math.Log(75000))]);
        var dimensions = Support.Table([.. shares.Rows.Select(row => System.Collections.Immutable.ImmutableArray.Create(row[0].Low, (row[1].Low + row[2].Low) / 2m, row[3].Low))]);
        return [.. Aggregation.Scores(dimensions, [1, 1, 1], rule).Select(score => score.Low)];
    }
}
