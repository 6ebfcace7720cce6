using System.Globalization;
using System.Numerics;
using CsCheck;
using FixScore.Numbers;

namespace FixScore.Exact.Tests.Numbers;

public sealed class RationalTests
{
    // Quotients: Python's decimal module, precision 60, then rounded half-even to 24 digits.
    [Theory]
    [InlineData("1", "7", "0.142857142857142857142857")]
    [InlineData("2", "3", "0.666666666666666666666667")]
    [InlineData("-2", "3", "-0.666666666666666666666667")]
    [InlineData("100000", "-0.3", "-333333.333333333333333333")]
    [InlineData("10", "4", "2.5")]
    [InlineData("79228162514264337593543949999", "1", "79228162514264337593543900000")]
    public void A_quotient_is_rounded_once_to_24_digits(string dividend, string divisor, string expected) =>
        Assert.Equal(expected, Text(Of(dividend) / Of(divisor)));

    // Half-even is worked out by hand from its definition (IEEE 754-2019, section 4.3.1).
    [Theory]
    [InlineData("1.000000000000000000000005", "1")]
    [InlineData("1.000000000000000000000015", "1.00000000000000000000002")]
    [InlineData("-1.000000000000000000000015", "-1.00000000000000000000002")]
    [InlineData("1.0000000000000000000000050001", "1.00000000000000000000001")]
    [InlineData("9.999999999999999999999995", "10")]
    [InlineData("9.999999999999999999999994999", "9.99999999999999999999999")]
    public void A_tie_goes_to_the_even_digit(string value, string expected) => Assert.Equal(expected, Text(Of(value)));

    [Theory]
    [InlineData(3, "0.0000000000000000000000000002")]
    [InlineData(2, "0.0000000000000000000000000001")]
    [InlineData(1, "0")]
    [InlineData(-1, "0")]
    public void What_is_too_small_for_a_decimal_is_rounded_once_to_28_places(int halves, string expected) =>
        Assert.Equal(expected, Text(new(halves, 2 * BigInteger.Pow(10, 28))));

    [Fact]
    public void Beyond_the_range_of_decimal_there_is_no_value()
    {
        // The greatest decimal has 29 digits; rounded up to 24 it is greater than any decimal.
        Assert.Throws<OverflowException>(() => Of("79228162514264337593543950335").ToDecimal());
        Assert.Throws<OverflowException>(() => new Rational(BigInteger.Pow(10, 60), 1).ToDecimal());
    }

    [Fact]
    public void A_default_is_zero()
    {
        Rational zero = default;
        Assert.Equal(0m, zero.ToDecimal());
        Assert.Equal(1.5m, (zero + 1.5m).ToDecimal());
        Assert.Throws<DivideByZeroException>(() => zero / zero);
    }

    [Fact]
    public void Minus_zero_loses_its_sign() => Assert.False(decimal.IsNegative(Of("-0.00").ToDecimal()));

    [Fact]
    public void Sums_differences_and_products_of_small_decimals_are_those_of_decimal() =>
        Gen.Select(AnyDecimal.Small, AnyDecimal.Small).Sample((a, b) =>
            (Of(a) + b).ToDecimal() == a + b && (Of(a) - b).ToDecimal() == a - b && (Of(a) * b).ToDecimal() == a * b);

    [Fact]
    public void Order_is_that_of_decimal() => Gen.Select(AnyDecimal.Any, AnyDecimal.Any).Sample((a, b) =>
        Of(a).CompareTo(b) == a.CompareTo(b) && (Of(a) < b) == (a < b) && (Of(a) >= b) == (a >= b));

    [Fact]
    public void A_rounded_value_stays_and_is_written_without_needless_zeros() => AnyDecimal.Any.Sample(value =>
    {
        var rounded = Of(value).ToDecimal();
        Assert.Equal(rounded, Of(rounded).ToDecimal());
        Assert.True(rounded.Scale == 0 || !rounded.ToString(CultureInfo.InvariantCulture).EndsWith('0'));
    });

    private static Rational Of(string value) => decimal.Parse(value, CultureInfo.InvariantCulture);

    private static Rational Of(decimal value) => value;

    private static string Text(Rational value) =>
        value.ToDecimal().ToString(CultureInfo.InvariantCulture);
}
