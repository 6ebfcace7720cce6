using System.Globalization;
using FixScore.Numbers;

namespace FixScore.Exact.Tests.Numbers;

public sealed class MeansTests
{
    private static readonly (decimal, decimal)[] Shares =
        [(0.25m, 4.5m), (0.2m, 2m), (0.1m, 1.25m), (0.2m, 3.15m), (0.15m, 5m), (0.1m, 0.5m)];

    private static readonly (decimal, decimal)[] Long =
    [
        (0.123456789012345m, 3.15151515151515151515152m), (0.25m, 4.00000000000000000000001m),
        (0.00000015m, 2.33333333333333333333333m), (2.71828182845904m, 1.11111111111111111111111m),
        (0.1m, 4.78787878787878787878788m),
    ];

    private static readonly (decimal, decimal)[] Wide = [(3, 79228162514264337593543000000m), (7, 3e-28m)];

    // All literals of the next three facts: Python's decimal module, precision 60, then rounded half-even to 24 digits
    // (or 28 places, if that is less).
    [Fact]
    public void Arithmetic_means_are_correctly_rounded()
    {
        Assert.Equal(3.08m, Means.WeightedArithmetic(Shares));
        Assert.Equal(1.53150920823089702813328m, Means.WeightedArithmetic(Long));
        Assert.Equal(23768448754279301278062900000m, Means.WeightedArithmetic(Wide));
        Assert.Equal(7.00000000000000000000002m, Means.WeightedArithmetic((1, 7.00000000000000000000001m), (1, 7.00000000000000000000002m)));
    }

    [Fact]
    public void Geometric_means_are_correctly_rounded()
    {
        Assert.Equal(2.55625833084544532497262m, Means.WeightedGeometric(Shares));
        Assert.Equal(1.33881284884373108882664m, Means.WeightedGeometric(Long));
        Assert.Equal(0.0000000000253307911043683648m, Means.WeightedGeometric(Wide));
        Assert.Equal(1.81712059283213965889121m, Means.WeightedGeometric((1, 1), (1, 2), (1, 3)));
        Assert.Equal(1.41421356237309504880169m, Means.WeightedGeometric((0.5m, 1), (0.5m, 2)));
    }

    [Fact]
    public void Harmonic_means_are_correctly_rounded()
    {
        Assert.Equal(1.89018901890189018901890m, Means.WeightedHarmonic(Shares));
        Assert.Equal(1.24239856065457711625677m, Means.WeightedHarmonic(Long));
        Assert.Equal(0.0000000000000000000000000004m, Means.WeightedHarmonic(Wide));
        Assert.Equal(1.63636363636363636363636m, Means.WeightedHarmonic((1, 1), (1, 2), (1, 3)));
    }

    [Fact]
    public void A_geometric_mean_that_all_but_ties_is_still_correctly_rounded()
    {
        // The square roots lie 1e-47 below the tie, worked out by hand from (1 + e)^(1/2) = 1 + e/2 - e^2/8 + ...
        Assert.Equal(1m, Means.WeightedGeometric((1, 1), (1, 1.00000000000000000000001m)));
        Assert.Equal(7.00000000000000000000001m, Means.WeightedGeometric((1, 7.00000000000000000000001m), (1, 7.00000000000000000000002m)));
    }

    [Fact]
    public void Exact_roots_come_out_exactly()
    {
        // By hand: (8^2 * 27)^(1/3) = 4 * 3, (0.01 * 100)^(1/2) = 1.
        Assert.Equal("12", PlainText.Of(Means.WeightedGeometric((2, 8), (1, 27))));
        Assert.Equal("1", PlainText.Of(Means.WeightedGeometric((1e-12m, 0.01m), (1e-12m, 100))));
    }

    [Fact]
    public void A_zero_ends_geometric_and_harmonic_means()
    {
        Assert.Equal(0m, Means.WeightedGeometric((999_999_999_999_999, 5), (1e-12m, 0)));
        Assert.Equal(0m, Means.WeightedHarmonic((999_999_999_999_999, 5), (1e-12m, 0.00m)));
    }

    [Fact]
    public void A_minimum_ignores_weights() => Assert.Equal("-1.5", PlainText.Of(Means.Minimum((1, 3), (0.001m, -1.50m), (9, 2))));

    [Fact]
    public void A_sum_takes_factors_of_zero_and_values_below_zero()
    {
        Assert.Equal(0m, Means.Sum());
        Assert.Equal("-0.5", PlainText.Of(Means.Sum((0, 5), (0.5m, -2), (0.25m, 2))));
        Assert.Throws<OverflowException>(() => Means.Sum((2, decimal.MaxValue)));
    }

    [Fact]
    public void What_has_no_mean_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Means.WeightedArithmetic());
        Assert.Throws<ArgumentException>(() => Means.Minimum());
        Assert.Throws<ArgumentOutOfRangeException>(() => Means.WeightedArithmetic((0, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Means.WeightedGeometric((1, -1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Means.WeightedHarmonic((1, -1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Means.Sum((-1, 1)));
        Assert.Throws<ArgumentException>(() => Means.WeightedGeometric((1, 1.000000000000000000000001m), (1, 2)));
    }

    [Fact]
    public void The_culture_changes_nothing()
    {
        var culture = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
        try { Assert.Equal("2.55625833084544532497262", PlainText.Of(Means.WeightedGeometric(Shares))); }
        finally { CultureInfo.CurrentCulture = culture; }
    }
}
