using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using CsCheck;
using FixScore.Canonical;

namespace FixScore.Exact.Tests.Canonical;

public sealed class CanonicalNumberTests
{
    [Theory]
    // RFC 8785, appendix B.
    [InlineData("0000000000000000", "0")]
    [InlineData("8000000000000000", "0")]
    [InlineData("0000000000000001", "5e-324")]
    [InlineData("8000000000000001", "-5e-324")]
    [InlineData("7fefffffffffffff", "1.7976931348623157e+308")]
    [InlineData("ffefffffffffffff", "-1.7976931348623157e+308")]
    [InlineData("4340000000000000", "9007199254740992")]
    [InlineData("c340000000000000", "-9007199254740992")]
    [InlineData("4430000000000000", "295147905179352830000")]
    [InlineData("44b52d02c7e14af5", "9.999999999999997e+22")]
    [InlineData("44b52d02c7e14af6", "1e+23")]
    [InlineData("44b52d02c7e14af7", "1.0000000000000001e+23")]
    [InlineData("444b1ae4d6e2ef50", "1e+21")]
    [InlineData("3eb0c6f7a0b5ed8d", "0.000001")]
    [InlineData("41b3de4355555553", "333333333.3333332")]
    [InlineData("41b3de4355555555", "333333333.3333333")]
    [InlineData("41b3de4355555557", "333333333.33333343")]
    // Worked out with a shortest-digits formatter of another language (Python's repr).
    [InlineData("3fd3333333333334", "0.30000000000000004")]
    [InlineData("4415af1d78b58c40", "100000000000000000000")]
    [InlineData("3ee4f8b588e368f1", "0.00001")]
    [InlineData("3e7ad7f29abcaf48", "1e-7")]
    [InlineData("4341c37937e08000", "10000000000000000")]
    // Powers of two, where the doubles below lie closer than those above; as an ECMAScript engine writes them.
    [InlineData("3e60000000000000", "2.9802322387695312e-8")]
    [InlineData("0410000000000000", "4.1045368012983762e-289")]
    [InlineData("3d30000000000000", "5.684341886080802e-14")]
    [InlineData("0010000000000000", "2.2250738585072014e-308")]
    public void A_double_is_written_as_ECMAScript_does(string bits, string expected) =>
        Assert.Equal(expected, Text(BitConverter.UInt64BitsToDouble(ulong.Parse(bits, NumberStyles.HexNumber, CultureInfo.InvariantCulture))));

    // RFC 8785, appendix B: an error.
    [Theory]
    [InlineData(0x7fffffffffffffff)]
    [InlineData(0x7ff0000000000000)]
    public void Neither_NaN_nor_infinity_has_a_form(long bits) =>
        Assert.Throws<JsonException>(() => Text(BitConverter.Int64BitsToDouble(bits)));

    // The double nearest to each by IEEE 754-2019, written by ECMA-262, Number::toString.
    [Theory]
    [InlineData("9007199254740993", "9007199254740992")]
    [InlineData("-0", "0")]
    [InlineData("-0.0", "0")]
    [InlineData("0.000001", "0.000001")]
    [InlineData("0.0000001", "1e-7")]
    [InlineData("-12.50", "-12.5")]
    [InlineData("1.0", "1")]
    [InlineData("1e2", "100")]
    [InlineData("1E-2", "0.01")]
    [InlineData("123456789012345", "123456789012345")]
    [InlineData("-999999999999.999", "-999999999999.999")]
    [InlineData("123e-20", "1.23e-18")]
    [InlineData("1e-400", "0")]
    public void A_number_is_written_as_its_double(string json, string expected) => Assert.Equal(expected, Canonical(json));

    [Fact]
    public void A_number_beyond_double_is_refused() => Assert.Throws<JsonException>(() => Canonical("1e400"));

    [Fact]
    public void What_is_written_reads_back_as_the_same_double() =>
        Gen.Double.Where(double.IsFinite).Sample(value => double.Parse(Text(value), CultureInfo.InvariantCulture) == value);

    [Fact]
    public void A_number_left_as_it_is_would_not_have_been_written_otherwise() =>
        Gen.Select(Gen.Long[-999_999_999_999_999, 999_999_999_999_999], Gen.Byte[0, 20]).Sample((units, scale) =>
        {
            var json = (units * new decimal(1, 0, 0, false, scale)).ToString(CultureInfo.InvariantCulture);
            Assert.Equal(Text(double.Parse(json, CultureInfo.InvariantCulture)), Canonical(json));
        });

    private static string Text(double value)
    {
        var output = new ArrayBufferWriter<byte>();
        CanonicalNumber.Write(value, output);
        return Encoding.UTF8.GetString(output.WrittenSpan);
    }

    private static string Canonical(string json) =>
        Encoding.UTF8.GetString(CanonicalJson.ToBytes(JsonElement.Parse(json)));
}
