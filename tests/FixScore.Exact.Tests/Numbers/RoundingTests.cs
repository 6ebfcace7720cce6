using System.Globalization;
using CsCheck;
using FixScore.Numbers;

namespace FixScore.Exact.Tests.Numbers;

public sealed class RoundingTests
{
    // Modes as IEEE 754-2019, section 4.3, names them: roundTiesToAway, roundTiesToEven, roundTowardZero. Worked out by hand.
    [Theory]
    [InlineData("2.5", 0, "3", "2", "2")]
    [InlineData("-2.5", 0, "-3", "-2", "-2")]
    [InlineData("3.5", 0, "4", "4", "3")]
    [InlineData("1.005", 2, "1.01", "1", "1")]
    [InlineData("1.0050000000000000000000000001", 2, "1.01", "1.01", "1")]
    [InlineData("7.449", 1, "7.4", "7.4", "7.4")]
    [InlineData("-0.04", 1, "0", "0", "0")]
    [InlineData("-0.05", 1, "-0.1", "0", "0")]
    [InlineData("9.996", 2, "10", "10", "9.99")]
    public void A_value_is_rounded_by_its_mode(string value, int places, string halfUp, string halfEven, string down) =>
        Assert.Equal([halfUp, halfEven, down], new[] { RoundingMode.HalfUp, RoundingMode.HalfEven, RoundingMode.Down }
            .Select(mode => PlainText.Of(Rounding.To(decimal.Parse(value, CultureInfo.InvariantCulture), places, mode))));

    [Fact]
    public void An_unknown_mode_and_too_many_places_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Rounding.To(1, 0, (RoundingMode)9));
        Assert.Throws<ArgumentOutOfRangeException>(() => Rounding.To(1, 29, RoundingMode.Down));
    }

    [Fact]
    public void Significant_digits_are_those_of_the_exact_fraction() =>
        AnyDecimal.Any.Sample(value => Rounding.ToSignificant(value) == ((Rational)value).ToDecimal());

    [Fact]
    public void Text_is_plain_and_reads_back() => AnyDecimal.Any.Sample(value =>
    {
        var text = PlainText.Of(value);
        Assert.Equal(value, decimal.Parse(text, CultureInfo.InvariantCulture));
        Assert.Matches(@"^(0|-?(0|[1-9][0-9]*)\.[0-9]*[1-9]|-?[1-9][0-9]*)$", text);
    });

    [Fact]
    public void Text_has_no_needless_zeros_and_no_exponent()
    {
        Assert.Equal("0", PlainText.Of(new decimal(0, 0, 0, true, 3)));
        Assert.Equal("3.15", PlainText.Of(3.1500m));
        Assert.Equal("1200", PlainText.Of(1200m));
        Assert.Equal("0.0000000000000000000000000001", PlainText.Of(1e-28m));
        Assert.Equal("79228162514264337593543950335", PlainText.Of(decimal.MaxValue));
    }
}
