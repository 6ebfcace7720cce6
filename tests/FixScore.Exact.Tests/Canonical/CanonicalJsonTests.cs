using System.Text;
using System.Text.Json;
using CsCheck;
using FixScore.Canonical;

namespace FixScore.Exact.Tests.Canonical;

public sealed class CanonicalJsonTests
{
    // RFC 8785, section 3.2: the sample and its canonical form.
    private const string Sample =
        """
        {
          "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
          "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
          "literals": [null, true, false]
        }
        """;

    private const string SampleForm =
        """{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}""";

    // RFC 8785, section 3.2.3: the names of its sorting example, numbered in the order in which it states them.
    private const string Names = """{"\u20ac":1,"\r":2,"\ufb33":3,"1":4,"\ud83d\ude00":5,"\u0080":6,"\u00f6":7}""";

    [Fact]
    public void The_sample_of_the_standard_takes_its_form()
    {
        Assert.Equal(SampleForm, Canonical(Sample));
        Assert.Equal(118, CanonicalJson.ToBytes(JsonElement.Parse(Sample)).Length);
    }

    [Fact]
    public void Names_are_sorted_by_UTF16_code_units() =>
        Assert.Equal("{\"\\r\":2,\"1\":4,\"\u0080\":6,\"\u00f6\":7,\"\u20ac\":1,\"\ud83d\ude00\":5,\"\ufb33\":3}", Canonical(Names));

    [Fact]
    public void Names_are_sorted_as_the_runtime_compares_ordinally() =>
        Gen.OneOf("a", "b", "\u0000", "\u007f", "\u0080", "\uabcd", "\ud7ff", "\ue000", "\uffff", "\ud800\udc00", "\udbff\udfff", "\\", "\"")
            .Array[0, 4].Select(string.Concat).HashSet[0, 20].Sample(names =>
            {
                var element = JsonSerializer.SerializeToElement(names.ToDictionary(name => name, _ => 0));
                using var form = JsonDocument.Parse(CanonicalJson.ToBytes(element));
                Assert.Equal(names.Order(StringComparer.Ordinal), form.RootElement.EnumerateObject().Select(member => member.Name));
            });

    // RFC 8785, section 3.2.2.2.
    [Theory]
    [InlineData("""
                "\u0008\u0009\u000A\u000c\u000d"
                """, """
                     "\b\t\n\f\r"
                     """)]
    [InlineData("""
                "\u0000\u001F\u000b\u007f\u002f\/"
                """, "\"\\u0000\\u001f\\u000b\u007f//\"")]
    [InlineData("""
                "\u00e4\uD83D\uDE00\u2028"
                """, "\"\u00e4\ud83d\ude00\u2028\"")]
    public void Only_what_must_be_escaped_is(string json, string expected) => Assert.Equal(expected, Canonical(json));

    [Theory]
    [InlineData("""{"name":"\ud800"}""")]
    [InlineData("""{"\ud800":0}""")]
    [InlineData("""["\udc00\ud800"]""")]
    [InlineData("""["\ud800x"]""")]
    [InlineData("""["\ud800\ud800"]""")]
    [InlineData("""["\ud800\n"]""")]
    public void A_lone_surrogate_is_refused(string json) =>
        Assert.Contains("lone surrogate", Assert.Throws<JsonException>(() => Canonical(json)).Message, StringComparison.Ordinal);

    [Fact]
    public void Invalid_UTF8_is_refused()
    {
        using var document = JsonDocument.Parse(new byte[] { (byte)'"', 0xED, 0xA0, 0x80, (byte)'"' });
        Assert.Throws<JsonException>(() => CanonicalJson.ToBytes(document.RootElement));
    }

    [Fact]
    public void A_default_element_is_refused() => Assert.Throws<ArgumentException>(() => CanonicalJson.ToBytes(default));

    [Fact]
    public void Members_are_left_out_of_the_outermost_object_only()
    {
        var element = JsonElement.Parse("""{"digest":"x","b":{"digest":1,"$schema":2},"\u0024schema":"y","a":[{"digest":3}]}""");
        Assert.Equal("""{"a":[{"digest":3}],"b":{"$schema":2,"digest":1}}""",
            Encoding.UTF8.GetString(CanonicalJson.ToBytes(element, "$schema", "digest")));
    }

    [Theory]
    [InlineData(" [ ] ", "[]")]
    [InlineData("{ \"a\" : { } , \"\" : [ [ ] , { } ] }", """{"":[[],{}],"a":{}}""")]
    [InlineData(" null ", "null")]
    public void Space_between_tokens_goes(string json, string expected) => Assert.Equal(expected, Canonical(json));

    [Theory]
    [InlineData(Sample)]
    [InlineData(Names)]
    public void A_canonical_form_is_its_own(string json) => Assert.Equal(Canonical(json), Canonical(Canonical(json)));

    [Fact]
    public void Large_data_grows_the_buffer()
    {
        var text = new string('x', 100_000);
        Assert.Equal($"[\"{text}\",\"{text}\"]", Canonical($"[ \"{text}\", \"{text}\" ]"));
    }

    private static string Canonical(string json) =>
        Encoding.UTF8.GetString(CanonicalJson.ToBytes(JsonElement.Parse(json)));
}
