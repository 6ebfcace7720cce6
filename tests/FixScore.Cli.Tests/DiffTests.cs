using System.Text.Json.Nodes;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

public sealed class DiffTests
{
    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    public void A_generation_is_told_with_what_it_did_to_the_score(string culture)
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.Run("diff", folder.Write("old.json", Tablets.Slate2), folder.Write("new.json", Tablets.Slate3), "--profile", "bench-balanced", "--culture", culture);
        Assert.Equal((1, ""), (ran.Code, ran.Error));
        Approved.Matches($"diff{(culture.Length > 0 ? "-" + culture : "")}", ran.Out);
    }

    [Theory]
    [InlineData("bench-balanced")]
    [InlineData("bench-limiting")]
    [InlineData("eu-2023-1669")]
    public void Json_lists_every_change_and_deltas_that_add_up_exactly(string profile)
    {
        using var folder = new TemporaryFolder();
        var root = JsonNode.Parse(Fixscore.Run("diff", folder.Write("old.json", Tablets.Slate2), folder.Write("new.json", Tablets.Slate3), "--profile", profile, "--json").Out)!;
        Assert.Equal(["changes", "score"], root.AsObject().Select(member => member.Key));
        Assert.Equal(["kind", "pointer", "text", "old", "new", "path", "was"], root["changes"]![0]!.AsObject().Select(member => member.Key));
        foreach (var end in (string[])["low", "high"])
            Assert.Equal(
                (decimal)root["score"]!["new"]![end]! - (decimal)root["score"]!["old"]![end]!, root["score"]!["attribution"]!.AsArray().Sum(delta => (decimal)delta!["delta"]![end]!));
    }

    [Fact]
    public void Without_a_profile_there_is_no_score_and_without_a_change_the_exit_code_is_zero()
    {
        using var folder = new TemporaryFolder();
        var record = folder.Write("slate.json", Tablets.Slate2);
        var ran = Fixscore.Run("diff", record, record, "--json");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Equal("""{"changes":[],"score":null}""", JsonNode.Parse(ran.Out)!.ToJsonString());
    }
}
