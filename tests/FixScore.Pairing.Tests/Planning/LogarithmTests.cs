using System.Globalization;
using FixScore.Pairing.Planning;

namespace FixScore.Pairing.Tests.Planning;

public sealed class LogarithmTests
{
    // Constants to 24 digits: Abramowitz and Stegun, Handbook of Mathematical Functions, table 1.1 (natural logarithms, from
    // memory), divided by ln 2; log2 of 10 is 3.321928094887362347870319429...
    [Theory]
    [InlineData("1", "0")]
    [InlineData("2", "1")]
    [InlineData("0.5", "-1")]
    [InlineData("1024", "10")]
    [InlineData("0.000030517578125", "-15")]
    [InlineData("10", "3.321928094887362347870319")]
    [InlineData("3", "1.584962500721156181453739")]
    [InlineData("0.1", "-3.321928094887362347870319")]
    public void Logarithms_are_those_of_the_tables(string number, string logarithm) =>
        Assert.Equal(Number(logarithm), Logarithm.Base2(Number(number)), 23);

    [Fact]
    public void There_is_no_logarithm_of_nothing() => Assert.Throws<ArgumentOutOfRangeException>(() => Logarithm.Base2(0));

    static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
