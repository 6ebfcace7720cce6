using System.Numerics;
using CsCheck;
using FixScore.Numbers;

namespace FixScore.Exact.Tests.Numbers;

/// <summary>What holds for means of anything (G. H. Hardy, J. E. Littlewood, G. Pólya, Inequalities, chapter II; from memory).</summary>
public sealed class MeansPropertyTests
{
    private static readonly Func<(decimal Weight, decimal Value)[], decimal>[] All =
        [t => Means.WeightedArithmetic(t), t => Means.WeightedGeometric(t), t => Means.WeightedHarmonic(t), t => Means.Minimum(t)];

    [Fact]
    public void Order_changes_no_digit() =>
        Gen.Select(AnyDecimal.Terms, Gen.Int).Sample((terms, seed) =>
        {
            var shuffled = terms.ToArray();
            new Random(seed).Shuffle(shuffled);
            Assert.All(All, mean => Assert.Equal(mean(terms), mean(shuffled)));
            Assert.Equal(Means.Sum(terms), Means.Sum(shuffled));
        });

    [Fact]
    public void A_mean_lies_between_the_least_and_the_greatest_value() =>
        AnyDecimal.Terms.Sample(terms => Assert.All(All, mean =>
            Assert.InRange(mean(terms), terms.Min(t => t.Value), terms.Max(t => t.Value))));

    [Fact]
    public void A_mean_of_equal_values_is_that_value() =>
        Gen.Select(AnyDecimal.Terms, AnyDecimal.Value).Sample((terms, value) =>
        {
            var equal = terms.Select(t => (t.Weight, value)).ToArray();
            Assert.All(All, mean => Assert.Equal(value, mean(equal)));
        });

    [Fact]
    public void A_greater_value_never_lowers_a_mean() =>
        Gen.Select(AnyDecimal.Terms, Gen.OneOf(AnyDecimal.Value, Gen.Const(1e-23m))).Sample((terms, rise) =>
        {
            var raised = terms.ToArray();
            raised[0].Value = Rounding.ToSignificant(raised[0].Value + rise);
            Assert.All(All, mean => Assert.True(mean(raised) >= mean(terms)));
        });

    [Fact]
    public void Weights_are_relative() =>
        Gen.Select(Gen.Select(Gen.Int[1, 1_000_000], AnyDecimal.Value).Array[1, 6], Gen.OneOf(1e-12m, 0.001m, 3m, 0.7m, 1e9m))
            .Sample((terms, factor) =>
            {
                var one = terms.Select(t => ((decimal)t.Item1, t.Item2)).ToArray();
                var other = terms.Select(t => (t.Item1 * factor, t.Item2)).ToArray();
                Assert.All(All, mean => Assert.Equal(mean(one), mean(other)));
            });

    [Fact]
    public void Arithmetic_is_never_below_geometric_and_geometric_never_below_harmonic() =>
        AnyDecimal.Terms.Sample(terms =>
            Means.WeightedArithmetic(terms) >= Means.WeightedGeometric(terms) && Means.WeightedGeometric(terms) >= Means.WeightedHarmonic(terms));

    /// <summary>Checked without logarithms: whole weights make it a root, and powers of integers are exact.</summary>
    [Fact]
    public void No_number_of_24_digits_is_nearer_to_a_geometric_mean() =>
        Gen.Select(Gen.Int[1, 9], AnyDecimal.Value).Array[2, 4].Sample(terms =>
        {
            var mean = Means.WeightedGeometric([.. terms.Select(t => ((decimal)t.Item1, t.Item2))]);
            var half = (Rational)Ulp(mean) / 2m;
            var product = terms.Aggregate((Rational)1m, (power, t) => power * Power(t.Item2, t.Item1));
            var weights = terms.Sum(t => t.Item1);
            return Power(mean - half, weights) <= product && product <= Power(mean + half, weights);
        });

    /// <summary>The unit of the 24th digit, or of the 28th place.</summary>
    private static decimal Ulp(decimal value)
    {
        var unit = 1e-28m;
        while (unit * 1e24m <= value) unit *= 10;
        return unit;
    }

    private static Rational Power(Rational value, int exponent) =>
        Enumerable.Repeat(value, exponent).Aggregate((power, factor) => power * factor);
}
