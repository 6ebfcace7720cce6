using System.Text.Json;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

public sealed class ScoreTests
{
    [Theory]
    [InlineData("bench-balanced", "")]
    [InlineData("bench-balanced", "de-DE")]
    [InlineData("bench-limiting", "")]
    public void A_score_tells_its_interval_what_limits_it_its_lines_and_what_is_missing(string profile, string culture)
    {
        var ran = Fixscore.RunOn(Tablets.Slate2, "score", "-", "--profile", profile, "--culture", culture);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Approved.Matches($"score-{profile}{(culture.Length > 0 ? "-" + culture : "")}", ran.Out);
    }

    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    public void Explained_it_reads_like_notes_from_the_bench(string culture) => Approved.Matches(
        $"explain{(culture.Length > 0 ? "-" + culture : "")}", Fixscore.RunOn(Tablets.Slate2, "score", "-", "--profile", "bench-balanced", "--explain", "--culture", culture).Out);

    [Fact]
    public void A_rule_that_judges_part_after_part_is_told_once()
    {
        var text = OneLine(Fixscore.RunOn(Tablets.Slate2, "score", "-", "--profile", "bench-limiting", "--explain").Out);
        Assert.Equal(2, text.Split("adhesive-strength, rule 1").Length);
        Assert.Equal(5, text.Split(", Adhesive strength:").Length);
    }

    [Fact]
    public void Notices_of_the_profile_stand_below_every_score()
    {
        var notice = JsonDocument.Parse(Installed.Resources.Bytes("profiles/bench-balanced.json")).RootElement.GetProperty("notices")[0].GetString()!;
        foreach (var more in (string[][])[[], ["--explain"]])
            Assert.Contains(notice, OneLine(Fixscore.RunOn(Tablets.Slate2, ["score", "-", "--profile", "bench-balanced", .. more]).Out), StringComparison.Ordinal);
    }

    [Fact]
    public void Footage_is_given_by_file_time_and_unit() => Assert.Contains(
        "footage/slate-2-unit-a-open.mp4 0:09:53 to 0:11:07, unit-a",
        OneLine(Fixscore.RunOn(Tablets.Slate2, "score", "-", "--profile", "bench-balanced", "--explain").Out), StringComparison.Ordinal);

    [Fact]
    public void Several_records_are_ranked_by_exact_totals()
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.Run("score", folder.Write("2.json", Tablets.Slate2), folder.Write("p.json", Tablets.Plinth), folder.Write("3.json", Tablets.Slate3), "--profile", "bench-balanced");
        Assert.Equal(0, ran.Code);
        Approved.Matches("score-ranking", ran.Out[ran.Out.LastIndexOf("Ranking\n", StringComparison.Ordinal)..]);
    }

    [Fact]
    public void Json_of_one_record_is_the_score_document_byte_for_byte()
    {
        using var folder = new TemporaryFolder();
        var printed = Fixscore.RunOn(Tablets.Slate2, "score", "-", "--profile", "bench-balanced", "--json");
        var written = Fixscore.RunOn(Tablets.Slate2, "score", "-", "--profile", "bench-balanced", "--out", folder.File("s.json"));
        Assert.Equal((0, 0), (printed.Code, written.Code));
        Assert.Equal(printed.Out, File.ReadAllText(folder.File("s.json")));
        Assert.EndsWith($"Score document written to {folder.File("s.json")}.\n", written.Out.Replace("written to\n", "written to ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Json_of_several_records_is_a_list_in_the_order_asked_for()
    {
        using var folder = new TemporaryFolder();
        var list = JsonDocument.Parse(Fixscore.Run("score", folder.Write("b.json", Tablets.Slate3), folder.Write("a.json", Tablets.Slate2), "--profile", "bench-balanced", "--json").Out).RootElement;
        Assert.Equal(["larkfield-slate-3", "larkfield-slate-2"], list.EnumerateArray().Select(each => each.GetProperty("record").GetProperty("id").GetString()!));
    }

    [Fact]
    public void A_profile_is_found_by_id_by_version_by_file_and_in_a_folder_before_the_built_in_ones()
    {
        using var folder = new TemporaryFolder();
        var own = Tablets.Changed(Installed.Resources.Bytes("profiles/bench-balanced.json"), profile => profile["title"] = "Own bench");
        var file = folder.Write("own.json", own);
        string Title(params string[] arguments) => Fixscore.RunOn(Tablets.Slate2, ["score", "-", .. arguments]).Out.Split('\n')[1];
        Assert.StartsWith("by Bench, balanced (", Title("--profile", "bench-balanced"), StringComparison.Ordinal);
        Assert.StartsWith("by Bench, balanced (", Title("--profile", "bench-balanced@1.0.0"), StringComparison.Ordinal);
        Assert.StartsWith("by Own bench (", Title("--profile", file), StringComparison.Ordinal);
        Assert.StartsWith("by Own bench (", Title("--profile", "bench-balanced", "--profiles", folder.Path), StringComparison.Ordinal);
    }

    [Fact]
    public void Records_that_the_profile_is_not_for_are_all_named()
    {
        using var folder = new TemporaryFolder();
        var laptops = folder.Write("laptops.json", Tablets.Changed(Installed.Resources.Bytes("profiles/bench-balanced.json"),
            profile => profile["appliesTo"] = new System.Text.Json.Nodes.JsonObject { ["kinds"] = new System.Text.Json.Nodes.JsonArray("laptop") }));
        var ran = Fixscore.Run("score", folder.Write("2.json", Tablets.Slate2), folder.Write("3.json", Tablets.Slate3), "--profile", laptops);
        Assert.Equal((3, ""), (ran.Code, ran.Out));
        Assert.Equal(2, ran.Error.Split('\n').Count(line => line.Contains("profile-not-for-kind", StringComparison.Ordinal)));
    }

    static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
