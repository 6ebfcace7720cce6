using System.Globalization;
using System.Text;
using FixScore.Reading;

namespace FixScore.Tests.Reading;

public sealed class NumberRuleTests
{
    [Theory]
    [InlineData("0", "0")]
    [InlineData("-0", "0")]
    [InlineData("0.000", "0")]
    [InlineData("0e99999", "0")]
    [InlineData("0e-99999", "0")]
    [InlineData("1e-12", "0.000000000001")]
    [InlineData("-1e-12", "-0.000000000001")]
    [InlineData("999999999999999", "999999999999999")]
    [InlineData("9.99999999999999e14", "999999999999999")]
    [InlineData("123456789012345", "123456789012345")]
    [InlineData("0.123456789012345", "0.123456789012345")]
    [InlineData("1.23456789012345e-12", "0.00000000000123456789012345")]
    [InlineData("000000000000000000000000000000000001e0", "1")]
    [InlineData("100000000000000000000e-10", "10000000000")]
    [InlineData("1.000000000000000000000000000000000000000000", "1")]
    [InlineData("1E+2", "100")]
    public void Numbers_within_the_rule_are_read_exactly(string text, string expected)
    {
        Assert.True(NumberRule.TryRead(Encoding.ASCII.GetBytes(text), out var number, out var wrong));
        Assert.Equal("", wrong);
        Assert.Equal(decimal.Parse(expected, CultureInfo.InvariantCulture), number);
    }

    [Theory]
    [InlineData("1e15", "1e15 or more")]
    [InlineData("-1000000000000000", "1e15 or more")]
    [InlineData("1e99999999999999999999", "1e15 or more")]
    [InlineData("9.999999999999999", "15 significant")]
    [InlineData("1000000.000000001", "15 significant")]
    [InlineData("9.99999999999999e-13", "smaller than 1e-12")]
    [InlineData("-1e-400", "smaller than 1e-12")]
    [InlineData("1e-99999999999999999999", "smaller than 1e-12")]
    public void Numbers_beyond_the_rule_are_refused_with_the_reason(string text, string reason)
    {
        Assert.False(NumberRule.TryRead(Encoding.ASCII.GetBytes(text), out _, out var wrong));
        Assert.Contains(reason, wrong, StringComparison.Ordinal);
    }
}
