using System.Text;
using System.Text.Json.Nodes;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

public sealed class CompareTests
{
    // Weighted sums by hand: 0.58, 0.56, 0.46; shares of weights as exact fractions, recomputed by polygon clipping: 9/32, 11/40, 71/160 for the first place.
    const string Specialists = "unit,a,b,c\n#weight,0.5,0.3,0.2\nA,0.8,0.4,0.3\nB,0.5,0.7,0.5\nC,0.2,0.6,0.9\n";

    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    public void Profiles_are_compared_by_places_agreement_reversals_dominance_and_weights(string culture)
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.Run(["compare", .. Records(folder), "--profile", "bench-balanced", "--profile", "bench-limiting", "--draws", "2000", "--culture", culture]);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Approved.Matches($"compare{(culture.Length > 0 ? "-" + culture : "")}", ran.Out);
    }

    [Fact]
    public void A_table_is_compared_by_rules_and_its_shares_of_weights_are_exact()
    {
        var ran = Table(Specialists, "--scale", "none", "--json");
        var root = JsonNode.Parse(ran.Out)!;
        Assert.Equal(["arithmetic", "geometric", "borda", "copeland"], root["profiles"]!.AsArray().Select(name => (string)name!));
        Assert.Equal(0.58m, (decimal)root["scores"]![0]![0]!["low"]!);
        Assert.Equal([0.28125, 0.1125, 0.60625], root["acceptability"]!["arithmetic"]!["A"]!.AsArray().Select(share => Math.Round((double)share!, 12)));
        Assert.Equal("13/28", (string)root["stability"]![0]!["order"]!["low"]!);
        Assert.Equal(["devices", "profiles", "scores", "ranks", "agreement", "reversals", "dominance", "efficient", "acceptability", "stability", "sensitivity", "draws", "seed", "uncertainty"], root.AsObject().Select(member => member.Key));
    }

    // Handbook on Constructing Composite Indicators, OECD and JRC 2008, section 6.11: (21,1,1,1) and (6,6,6,6) tie arithmetically, not geometrically.
    [Fact]
    public void Full_compensation_ties_what_the_geometric_mean_parts()
    {
        var ranks = JsonNode.Parse(Table("unit,a,b,c,d\nX,21,1,1,1\nY,6,6,6,6\n", "--scale", "none", "--json").Out)!["ranks"]!;
        Assert.Equal(("1.5", "2", "1"), (ranks[0]![0]!["middle"]!.ToJsonString(), ranks[0]![1]!["middle"]!.ToJsonString(), ranks[1]![1]!["middle"]!.ToJsonString()));
    }

    [Fact]
    public void Goalposts_directions_ranges_and_unknown_cells_are_taken()
    {
        var root = JsonNode.Parse(Table("unit,price,years\n#better,less,more\n#worst,100,0\n#best,0,10\nA,25,5\nB,,2..4\n", "--json").Out)!;
        Assert.Equal(["arithmetic", "geometric"], root["profiles"]!.AsArray().Select(name => (string)name!));
        Assert.Equal((0.625m, 0.625m), Ends(root["scores"]![0]![0]!));
        Assert.Equal((0.1m, 0.7m), Ends(root["scores"]![1]![0]!));
    }

    [Fact]
    public void Everything_wrong_with_a_table_is_told_at_once_with_its_line()
    {
        var ran = Table("unit,a,b\nA,1,NaN\nA,2\n#wieght,1,1\nB,,3..2\n#better,up,more\n");
        Assert.Equal((3, ""), (ran.Code, ran.Out));
        string[] expected = ["2:1 not-a-number", "3:1 row-twice", "3:1 cells-do-not-fit", "4:1 row-unknown", "5:1 unknown-without-goalposts", "5:1 not-a-number", "6:1 not-a-direction"];
        Assert.All(expected, each => Assert.Contains(each, ran.Error, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("unit,a\nA,1\n", "too-few-units")]
    [InlineData("", "table-without-criteria")]
    [InlineData("unit,a\n#weight,0\nA,1\nB,2\n", "weights-not-positive")]
    [InlineData("unit,a\n#worst,1\n#best,1\nA,1\nB,2\n", "goalposts-equal")]
    public void What_cannot_be_compared_is_a_problem(string table, string code) => Assert.Contains(code, Table(table).Error, StringComparison.Ordinal);

    [Fact]
    public void Units_that_are_all_level_share_all_places()
    {
        var root = JsonNode.Parse(Table("unit,a,b\nA,1,1\nB,1,1\n", "--scale", "none", "--json").Out)!;
        Assert.Equal(1.5m, (decimal)root["ranks"]![0]![0]!["middle"]!);
        Assert.Equal([0.5, 0.5], root["acceptability"]!["arithmetic"]!["B"]!.AsArray().Select(share => Math.Round((double)share!, 12)));
    }

    [Theory]
    [InlineData("There is nothing to compare: name two records at least, or a --table.", "compare", "a.json", "--profile", "bench-balanced")]
    [InlineData("Name a --profile at least, and two to compare profiles.", "compare", "a.json", "b.json")]
    [InlineData("'0' is not a whole number above 0 that --draws can take.", "compare", "a.json", "b.json", "--draws", "0")]
    [InlineData("Compare records or a --table, not both.", "compare", "a.json", "--table", "t.csv")]
    public void Slips_are_told(string says, params string[] arguments)
    {
        var ran = Fixscore.Run(arguments);
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_that_a_profile_is_not_for_is_named()
    {
        using var folder = new TemporaryFolder();
        var laptop = folder.Write("laptop.json", Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(Tablets.Slate2).Replace("\"slate-tablet\"", "\"laptop\"", StringComparison.Ordinal)));
        var ran = Fixscore.Run("compare", laptop, folder.Write("slate.json", Tablets.Slate3), "--profile", "eu-2023-1669");
        Assert.Equal(3, ran.Code);
        Assert.Contains("laptop.json profile-not-for-kind", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_command_in_a_papers_folder_makes_the_same_bytes_again()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(0, Fixscore.Run(["compare", .. Records(folder), "--profile", "owner-first", "--profile", "bench-limiting", "--draws", "500", "--weights", "centred", "--paper", folder.File("paper")]).Code);
        var command = File.ReadAllLines(folder.File("paper/METHODS.md")).Single(line => line.StartsWith("fixscore compare", StringComparison.Ordinal));
        Assert.Equal(0, Fixscore.Run([.. command.Split(' ')[1..].Select(word => word.Contains('/', StringComparison.Ordinal) || word is "again" or "profiles" ? Path.Combine(folder.File("paper"), word) : word)]).Code);
        var files = Directory.GetFiles(folder.File("paper/again"), "*", SearchOption.AllDirectories);
        Assert.True(files.Length > 20);
        Assert.All(files, file => Assert.Equal(File.ReadAllBytes(file), File.ReadAllBytes(Path.Combine(folder.File("paper"), Path.GetRelativePath(folder.File("paper/again"), file)))));
    }

    [Fact]
    public void A_papers_text_forms_read_as_approved()
    {
        using var folder = new TemporaryFolder();
        Fixscore.Run(["compare", .. Records(folder), "--profile", "owner-first", "--profile", "bench-limiting", "--draws", "500", "--paper", folder.File("paper")]);
        foreach (var name in (string[])["METHODS.md", "tables/scores.csv", "tables/scores.tex", "tables/uncertainty.csv", "tables/sensitivity.csv", "figures/places.svg", "figures/acceptability-owner-first.svg"])
            Approved.Matches("paper-" + Path.GetFileName(name), File.ReadAllText(folder.File("paper/" + name)));
    }

    [Fact]
    public void Assessors_of_one_device_are_told_how_far_they_agree_and_on_what_not()
    {
        using var folder = new TemporaryFolder();
        var other = Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(Tablets.Slate2).Replace("\"softensAtC\": 70", "\"softensAtC\": 65", StringComparison.Ordinal).Replace("\"id\": \"larkfield-slate-2\"", "\"id\": \"second-look\"", StringComparison.Ordinal)
            .Replace("painted aluminium shell", "aluminium shell", StringComparison.Ordinal));
        string[] files = [folder.Write("one.json", Tablets.Slate2), folder.Write("other.json", other)];
        var root = JsonNode.Parse(Fixscore.Run(["compare", "--assessors", .. files, "--profile", "bench-balanced", "--json"]).Out)!;
        Assert.Equal(1.0, (double)root["alpha"]!);
        Assert.Contains(root["disagreements"]!.AsArray(), each => (string)each!["path"]! == "/parts/back-cover/name");
        var ran = Fixscore.Run(["compare", "--assessors", .. files, "--profile", "bench-balanced"]);
        Assert.Equal((1, ""), (ran.Code, ran.Error));
        Approved.Matches("compare-assessors", ran.Out);
        Assert.Contains("Agreement needs two records at least.", Fixscore.Run("compare", "--assessors", files[0], "--profile", "bench-balanced").Error, StringComparison.Ordinal);
        Assert.Contains("--assessors takes one --profile.", Fixscore.Run(["compare", "--assessors", .. files]).Error, StringComparison.Ordinal);
    }

    static (decimal, decimal) Ends(JsonNode score) => ((decimal)score["low"]!, (decimal)score["high"]!);

    static Ran Table(string table, params string[] more) => Fixscore.RunOn(Encoding.UTF8.GetBytes(table), ["compare", "--table", "-", .. more]);

    static string[] Records(TemporaryFolder folder) =>
        [folder.Write("slate-2.json", Tablets.Slate2), folder.Write("slate-3.json", Tablets.Slate3), folder.Write("plinth.json", Tablets.Plinth)];
}
