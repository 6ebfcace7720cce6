using System.Collections.Immutable;
using CsCheck;
using FixScore.Analysis.Assessors;

namespace FixScore.Analysis.Tests.Assessors;

/// <summary>K. Krippendorff, Computing Krippendorff's Alpha-Reliability (2011).</summary>
public sealed class AlphaTests
{
    static readonly ImmutableArray<ImmutableArray<decimal?>> Four =
        [Read("1 2 3 3 2 1 4 1 2 . . ."), Read("1 2 3 3 2 2 4 1 2 5 . 3"), Read(". 3 3 3 2 3 4 2 2 5 1 ."), Read("1 2 3 3 2 4 4 1 2 5 1 .")];

    // Published: .743, .815, .849, .797; more digits recomputed.
    [Theory]
    [InlineData(MeasurementLevel.Nominal, 0.743421052632)]
    [InlineData(MeasurementLevel.Ordinal, 0.815387503755)]
    [InlineData(MeasurementLevel.Interval, 0.849107142857)]
    [InlineData(MeasurementLevel.Ratio, 0.797402774712)]
    public void Four_observers_with_gaps(MeasurementLevel level, double alpha) => Support.Near(alpha, KrippendorffAlpha.Of(Four, level).Alpha);

    [Fact]
    public void Coincidences_of_the_four()
    {
        var alpha = KrippendorffAlpha.Of(Four, MeasurementLevel.Nominal);
        Support.Equal([1m, 2, 3, 4, 5], alpha.Values);
        Assert.Equal(40, alpha.Pairable);
        double[] first = [7, 4 / 3d, 1 / 3d, 1 / 3d, 0], second = [4 / 3d, 10, 4 / 3d, 1 / 3d, 0];
        Assert.All(first.Zip(alpha.Coincidences[0]).Concat(second.Zip(alpha.Coincidences[1])), each => Support.Near(each.First, each.Second));
    }

    // The same paper, two observers, two values: alpha = 0.095.
    [Fact]
    public void Two_observers_of_ten_units()
    {
        var alpha = KrippendorffAlpha.Of([Read("0 1 0 0 0 0 0 0 1 0"), Read("1 1 1 0 0 1 0 0 0 0")], MeasurementLevel.Nominal);
        Assert.Equal([[10, 4], [4, 2]], alpha.Coincidences.Select(row => row.ToArray()));
        Support.Near(2 / 21d, alpha.Alpha);
    }

    [Fact]
    public void Where_all_values_are_equal_or_none_is_paired_nothing_can_be_said()
    {
        Assert.Null(KrippendorffAlpha.Of([Read("2 2"), Read("2 2")], MeasurementLevel.Interval).Alpha);
        Assert.Null(KrippendorffAlpha.Of([Read("2 ."), Read(". 3")], MeasurementLevel.Interval).Alpha);
        Assert.Null(KrippendorffAlpha.Of([], MeasurementLevel.Nominal).Alpha);
    }

    [Fact]
    public void What_cannot_be_compared_is_refused()
    {
        Assert.Throws<ArgumentException>(() => KrippendorffAlpha.Of([Read("1 2"), Read("1")], MeasurementLevel.Nominal));
        Assert.Throws<ArgumentException>(() => KrippendorffAlpha.Of([[-1m], [1m]], MeasurementLevel.Ratio));
    }

    [Fact]
    public void Alpha_is_at_most_one_and_does_not_ask_which_observer_comes_first() =>
        Gen.Int[0, 4].Select(value => value == 0 ? null : (decimal?)value).Array[6].Array[2, 4].Sample(rows =>
        {
            foreach (var level in Enum.GetValues<MeasurementLevel>())
            {
                var alpha = KrippendorffAlpha.Of([.. rows.Select(row => row.ToImmutableArray())], level).Alpha;
                var turned = KrippendorffAlpha.Of([.. rows.Reverse().Select(row => row.ToImmutableArray())], level).Alpha;
                if (alpha is null) Assert.Null(turned);
                else Support.Near(alpha.Value, turned, 1e-9);
                Assert.True(alpha is null or <= 1 + 1e-12);
            }
        });

    static ImmutableArray<decimal?> Read(string values) =>
        [.. values.Split(' ').Select(value => value == "." ? null : (decimal?)int.Parse(value, System.Globalization.CultureInfo.InvariantCulture))];
}
