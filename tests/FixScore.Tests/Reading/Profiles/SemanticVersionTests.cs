using FixScore.Reading.Profiles;

namespace FixScore.Tests.Reading.Profiles;

/// <summary>Semantic Versioning 2.0.0, semver.org: what is a version, and which comes first.</summary>
public sealed class SemanticVersionTests
{
    // Section 11 of the specification gives both rows.
    [Theory]
    [InlineData("1.0.0 2.0.0 2.1.0 2.1.1")]
    [InlineData("1.0.0-alpha 1.0.0-alpha.1 1.0.0-alpha.beta 1.0.0-beta 1.0.0-beta.2 1.0.0-beta.11 1.0.0-rc.1 1.0.0")]
    [InlineData("0.9.9 0.10.0 1.0.0 10.0.0")]
    [InlineData("1.2.3-1 1.2.3-9 1.2.3-10 1.2.3-A 1.2.3-a 1.2.3-a.0 1.2.3-a.0.b 1.2.3 99999999999999999999.0.0")]
    [InlineData("no-version 0.0.0-0 0.0.0")]
    public void Rising_versions(string versions)
    {
        var all = versions.Split(' ');
        for (var i = 0; i < all.Length; i++)
            for (var j = 0; j < all.Length; j++) Assert.Equal(Math.Sign(i.CompareTo(j)), Math.Sign(SemanticVersion.Order.Compare(all[i], all[j])));
    }

    // Section 10: build metadata is ignored when precedence is told.
    [Theory]
    [InlineData("1.0.0+20130313144700", "1.0.0")]
    [InlineData("1.0.0-beta+exp.sha.5114f85", "1.0.0-beta+21AF26D3---117B344092BD")]
    public void Builds_have_no_order(string left, string right) => Assert.Equal(0, SemanticVersion.Order.Compare(left, right));

    // From the list that goes with the grammar on semver.org, from memory.
    [Theory]
    [InlineData("0.0.4")]
    [InlineData("10.20.30")]
    [InlineData("1.1.2-prerelease+meta")]
    [InlineData("1.1.2+meta-valid")]
    [InlineData("1.0.0-alpha-a.b-c-somethinglong+build.1-aef.1-its-okay")]
    [InlineData("1.0.0-0A.is.legal")]
    [InlineData("2.0.0+build.1848")]
    [InlineData("1.2.3----RC-SNAPSHOT.12.9.1--.12+788")]
    [InlineData("99999999999999999999999.999999999999999999.99999999999999999")]
    public void Valid(string version) => Assert.True(SemanticVersion.IsValid(version));

    [Theory]
    [InlineData("1")]
    [InlineData("1.2")]
    [InlineData("1.2.3-0123")]
    [InlineData("1.2.3-0123.0123")]
    [InlineData("1.1.2+.123")]
    [InlineData("+invalid")]
    [InlineData("-invalid+invalid")]
    [InlineData("alpha_beta")]
    [InlineData("1.0.0-alpha..1")]
    [InlineData("01.1.1")]
    [InlineData("1.01.1")]
    [InlineData("1.1.01")]
    [InlineData("1.2.3.DEV")]
    [InlineData("1.2.3-")]
    [InlineData("1.2.3\n")]
    [InlineData("\u0661.2.3")]
    public void Invalid(string version) => Assert.False(SemanticVersion.IsValid(version));
}
