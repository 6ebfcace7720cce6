using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

public sealed class VerifyTests : IDisposable
{
    readonly TemporaryFolder folder = new();

    static byte[] Score { get; } = Encoding.UTF8.GetBytes(Fixscore.RunOn(Tablets.Slate2, "score", "-", "--profile", "bench-balanced", "--json").Out);

    public void Dispose() => folder.Dispose();

    Ran Verify(byte[] score, params string[] more) => Fixscore.RunOn(score, ["verify", "-", "--record", folder.Write("r.json", Tablets.Slate2), .. more]);

    static byte[] With(Action<JsonNode> change, bool digest = false)
    {
        var changed = Tablets.Changed(Score, change);
        if (!digest) return changed;
        using var document = JsonDocument.Parse(changed);
        var fits = Canonical.Digest.Of(document.RootElement, "digest", "$schema");
        return Tablets.Changed(changed, score => score["digest"] = fits);
    }

    [Fact]
    public void What_is_computed_again_the_same_is_identical()
    {
        var ran = Verify(Score, "--strict");
        Assert.Equal((0, "identical\nComputed again, every member is the same.\n", ""), (ran.Code, ran.Out, ran.Error));
    }

    [Fact]
    public void Another_version_of_the_kernel_is_equal_and_named_but_not_identical()
    {
        var older = With(score => score["kernel"]!["version"] = "0.0.9", digest: true);
        var ran = Verify(older);
        Assert.Equal(0, ran.Code);
        Assert.StartsWith("equal\n", ran.Out, StringComparison.Ordinal);
        Assert.Contains("  /kernel/version\n    given:    \"0.0.9\"\n", ran.Out, StringComparison.Ordinal);
        Assert.Equal(1, Verify(older, "--strict").Code);
    }

    [Fact]
    public void A_changed_total_is_different_with_both_values_and_the_broken_digest_is_told()
    {
        var ran = Verify(With(score => score["shown"]!["low"] = "99"));
        Assert.Equal(1, ran.Code);
        Assert.StartsWith("different\nThe first difference that counts:\n  /shown/low\n    given:    \"99\"\n    computed: \"", ran.Out, StringComparison.Ordinal);
        Assert.Contains("The document's digest is not that of its content", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_changed_total_with_a_digest_made_to_fit_is_different_all_the_same()
    {
        var ran = Verify(With(score => score["shown"]!["low"] = "99", digest: true));
        Assert.Equal(1, ran.Code);
        Assert.DoesNotContain("is not that of its content", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_names_verdict_digest_and_every_difference()
    {
        var found = JsonDocument.Parse(Verify(With(score => score["shown"]!["low"] = "99"), "--json").Out).RootElement;
        Assert.Equal("different", found.GetProperty("verdict").GetString());
        Assert.False(found.GetProperty("digestFits").GetBoolean());
        var first = found.GetProperty("differences")[0];
        Assert.Equal(("/shown/low", "\"99\"", true), (first.GetProperty("pointer").GetString(), first.GetProperty("given").GetString(), first.GetProperty("counts").GetBoolean()));
    }

    [Fact]
    public void A_profile_file_stands_in_for_the_installed_one_and_its_digest_differs()
    {
        var other = folder.Write("p.json", Tablets.Changed(Installed.Resources.Bytes("profiles/bench-balanced.json"), profile => profile["note"] = "another"));
        var ran = Verify(Score, "--profile", other);
        Assert.Equal(1, ran.Code);
        Assert.Contains("  /profile/digest\n", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_profile_that_is_not_installed_is_named_with_its_version()
    {
        var ran = Verify(With(score => score["profile"]!["version"] = "9.9.9"));
        Assert.Equal(3, ran.Code);
        Assert.Contains("there is no profile 'bench-balanced@9.9.9'", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{")]
    [InlineData("{\"format\":\"fixscore-record/1\"}")]
    [InlineData("{\"format\":\"fixscore-score/1\",\"total\":1,\"total\":2}")]
    [InlineData("{\"format\":\"fixscore-score/1\",\"digest\":\"\\ud800\"}")]
    [InlineData("{\"\":[{\"\\ud800\":{}}]}")]
    [InlineData("{\"format\":\"fixscore-score/1\",\"share\":1e999}")]
    [InlineData("{\"format\":\"fixscore-score/1\"}")]
    public void What_is_no_score_document_is_refused(string text)
    {
        var ran = Verify(Encoding.UTF8.GetBytes(text));
        Assert.Equal((3, ""), (ran.Code, ran.Out));
        Assert.Contains("not-a-score", ran.Error, StringComparison.Ordinal);
    }
}
