using System.Globalization;
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
        Assert.Equal(["changes", "score", "proofs"], root.AsObject().Select(member => member.Key));
        Assert.Equal(["kind", "pointer", "text", "old", "new", "path", "was"], root["changes"]![0]!.AsObject().Select(member => member.Key));
        foreach (var end in (string[])["low", "high"])
            Assert.Equal(
                (decimal)root["score"]!["new"]![end]! - (decimal)root["score"]!["old"]![end]!, root["score"]!["attribution"]!.AsArray().Sum(delta => (decimal)delta!["delta"]![end]!));
    }

    [Fact]
    public void Values_stand_where_their_pointers_lead()
    {
        using var folder = new TemporaryFolder();
        var (old, @new) = (Tablets.Slate2, Tablets.Slate3);
        var root = JsonNode.Parse(Fixscore.Run("diff", folder.Write("old.json", old), folder.Write("new.json", @new), "--json").Out)!;
        var leaves = root["changes"]!.AsArray().Where(change => change!["old"] is JsonValue || change["new"] is JsonValue).ToArray();
        Assert.True(leaves.Length > 100);
        foreach (var change in leaves)
        {
            var gone = (string?)change!["kind"] == "removed";
            var there = ((string)change["pointer"]!).Split('/').Skip(1)
                .Aggregate(JsonNode.Parse(gone ? old : @new)!, (at, step) => at is JsonArray list ? list[int.Parse(step, CultureInfo.InvariantCulture)]! : at[step]!);
            Assert.True(JsonNode.DeepEquals(there, change[gone ? "old" : "new"]), $"{change["pointer"]}");
        }
    }

    [Fact]
    public void Trials_of_the_same_kind_that_prove_otherwise_are_told()
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.Run("diff", folder.Write("old.json", Tablets.Slate2), folder.Write("new.json", Tablets.Slate3), "--json");
        var proof = JsonNode.Parse(ran.Out)!["proofs"]!.AsArray().Single(each => (string?)each!["part"] == "front-camera" && (string?)each["lockState"] == "locked");
        Assert.Equal(("suspect", "cleared"), ((string?)proof!["old"]![0]!["verdict"], (string?)proof["new"]![0]!["verdict"]));
    }

    [Fact]
    public void Without_a_profile_there_is_no_score_and_without_a_change_the_exit_code_is_zero()
    {
        using var folder = new TemporaryFolder();
        var record = folder.Write("slate.json", Tablets.Slate2);
        var ran = Fixscore.Run("diff", record, record, "--json");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Equal("""{"changes":[],"score":null,"proofs":[]}""", JsonNode.Parse(ran.Out)!.ToJsonString());
    }
}
