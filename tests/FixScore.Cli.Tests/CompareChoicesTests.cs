using System.Text.Json.Nodes;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

public sealed class CompareChoicesTests
{
    [Fact]
    public void Each_choice_that_a_profile_has_is_a_row_of_its_own()
    {
        using var folder = new TemporaryFolder();
        var rows = Sensitivity(Fixscore.Run(["compare", .. Records(folder), "--profile", "bench-balanced", "--draws", "100", "--json"]));
        Assert.Equal(
            [
                "weight fasteners 0", "weight adhesives 0", "weight modularity 0", "weight pairing 0", "weight documentation 0", "rule rule 5",
                "bands bands of fasteners 5", "bands bands of adhesives 5", "bands bands of modularity 5", "bands bands of pairing 5", "bands bands of documentation 5",
                "gates gates 2", "unknown unknown 3",
            ],
            rows);
    }

    // The law leaves ten points silent, which can be read in 13 other ways; it has no gate.
    [Fact]
    public void A_profile_with_silent_points_has_a_row_for_readings_and_without_gates_none_for_gates()
    {
        using var folder = new TemporaryFolder();
        var rows = Sensitivity(Fixscore.Run(["compare", .. Records(folder), "--profile", "eu-2023-1669", "--draws", "100", "--json"]));
        Assert.Contains("readings readings 14", rows);
        Assert.DoesNotContain(rows, row => row.StartsWith("gates", StringComparison.Ordinal));
    }

    [Fact]
    public void The_picture_of_places_is_that_of_the_paper()
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.Run(["compare", .. Records(folder), "--profile", "owner-first", "--profile", "bench-limiting", "--draws", "100", "--svg", folder.File("places.svg"), "--paper", folder.File("paper")]);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Equal(File.ReadAllBytes(folder.File("paper/figures/places.svg")), File.ReadAllBytes(folder.File("places.svg")));
    }

    [Fact]
    public void The_rules_of_a_table_are_drawn_too()
    {
        using var folder = new TemporaryFolder();
        var table = folder.Write("table.csv", "unit,a,b\nX,1,9\nY,4,4\n"u8);
        Assert.Equal(0, Fixscore.Run("compare", "--table", table, "--scale", "none", "--svg", folder.File("rules.svg")).Code);
        Assert.Contains(">geometric<", File.ReadAllText(folder.File("rules.svg")), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_there_is_one_column_there_is_nothing_to_draw()
    {
        using var folder = new TemporaryFolder();
        var table = folder.Write("table.csv", "unit,a,b\nX,1,9\nY,4,4\n"u8);
        var rule = Fixscore.Run("compare", "--table", table, "--rule", "minimum", "--svg", folder.File("none.svg"));
        Assert.Equal((2, ""), (rule.Code, rule.Out));
        Assert.Contains("--svg draws lines from one rule to the next, and there is only one.", rule.Error, StringComparison.Ordinal);
        Assert.Contains("from one profile to the next", Fixscore.Run(["compare", .. Records(folder), "--profile", "owner-first", "--draws", "100", "--svg", folder.File("none.svg")]).Error, StringComparison.Ordinal);
        Assert.Contains("there are no places for --svg to draw", Fixscore.Run(["compare", "--assessors", .. Records(folder), "--profile", "owner-first", "--svg", folder.File("none.svg")]).Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder.File("none.svg")));
    }

    static string[] Sensitivity(Ran ran) =>
        [.. JsonNode.Parse(ran.Out)!["sensitivity"]!.AsArray().Select(row => $"{(string)row!["kind"]!} {(string)row["input"]!} {(int)row["ways"]!}")];

    static string[] Records(TemporaryFolder folder) => [folder.Write("slate-2.json", Tablets.Slate2), folder.Write("slate-3.json", Tablets.Slate3), folder.Write("plinth.json", Tablets.Plinth)];
}
