using System.Text.Json;
using FixScore.Canonical;

namespace FixScore.Exact.Tests.Canonical;

public sealed class DigestTests
{
    // RFC 8785, section 3.2; the digest is that of the expected output in the test data of the RFC's authors.
    [Fact]
    public void The_sample_of_the_standard_has_its_digest() => Assert.Equal(
        "sha256:2d5e01a318d0f0879ab568c4be289c8b1f64ef8921a53c6277d5e069978baacb",
        Of("""
           {"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],
            "string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}
           """));

    // Forms written out by hand, digests with Python's hashlib. The second has the names of RFC 8785, section 3.2.3.
    [Theory]
    [InlineData("{}", "44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a")]
    [InlineData("""{"\u20ac":5,"\r":1,"\ufb33":7,"1":2,"\ud83d\ude00":6,"\u0080":3,"\u00f6":4}""",
        "4bd52d82f332c2e5c7206abd57c74b45dd4f0fef63ab7af87b8bde4481e450e7")]
    [InlineData("""{"schema":1,"parts":[{"mass":12.50,"id":"p1"},{"mass":1e-3,"id":"p2"}]}""",
        "ecfe3f5efeab0fb139338ca596614b219efa4702f57c269f1c2ce18dfd3b9fa2")]
    public void Equal_data_have_equal_digests(string json, string expected) => Assert.Equal("sha256:" + expected, Of(json));

    [Fact]
    public void A_digest_does_not_cover_what_is_left_out() => Assert.Equal(
        "sha256:44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a",
        Digest.Of(JsonElement.Parse("""{"digest":"sha256:00"}"""), "digest"));

    // FIPS 180-4's example "abc" (from memory).
    [Fact]
    public void Bytes_have_the_digest_of_the_standard() => Assert.Equal(
        "sha256:ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Digest.Of("abc"u8));

    private static string Of(string json) => Digest.Of(JsonElement.Parse(json));
}
