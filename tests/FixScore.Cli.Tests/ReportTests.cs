using System.Text.Json;
using FixScore.Cli.Installed;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

public sealed class ReportTests : IDisposable
{
    readonly TemporaryFolder records = new();

    public void Dispose() => records.Dispose();

    string Demo(string id) => records.Write($"{id}.json", Resources.Bytes($"demo/{id}.json"));

    [Theory]
    [InlineData("r.html", "<!DOCTYPE html>")]
    [InlineData("r.HTM", "<!DOCTYPE html>")]
    [InlineData("r.md", "# How repairable: Larkfield Slate 3")]
    [InlineData("r.txt", "How repairable: Larkfield Slate 3\n===")]
    public void The_name_of_the_file_says_which_form(string name, string start)
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.Run("report", Demo("larkfield-slate-3"), "--out", folder.File(name));
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.StartsWith(start, File.ReadAllText(folder.File(name)), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_file_the_terminal_gets_the_short_form_at_80_columns()
    {
        var ran = Fixscore.Run("report", Demo("larkfield-slate-3"), Demo("larkfield-slate-2"));
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Contains("Every line: 63 lines of points and weights", ran.Out, StringComparison.Ordinal);
        Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void Profiles_generations_draws_and_heading_are_as_asked_for_and_the_command_is_told()
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.Run("report", Demo("larkfield-slate-2"), Demo("larkfield-slate-3"), "--profile", "bench-limiting", "--profile", "bench-balanced", "--title", "A & B",
            "--generation", "larkfield-slate-2", "larkfield-slate-3", "--draws", "300", "--seed", "7", "--out", folder.File("r.md"));
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        var text = File.ReadAllText(folder.File("r.md"));
        Assert.All(["# A \\& B", "Bench, limiting", "From Larkfield Slate 2 to Larkfield Slate 3", "300 draws, seed 7",
            "fixscore report larkfield-slate-2.json larkfield-slate-3.json --profile bench-limiting --profile bench-balanced --generation larkfield-slate-2 larkfield-slate-3 --draws 300 --seed 7"],
            part => Assert.Contains(part, text, StringComparison.Ordinal));
    }

    [Fact]
    public void Tables_and_cards_go_to_folders_of_their_own()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(0, Fixscore.Run("report", Demo("larkfield-slate-2"), Demo("larkfield-slate-3"), "--tables", folder.File("t"), "--card", folder.File("c"), "--out", folder.File("r.txt")).Code);
        Assert.Equal(["larkfield-slate-2.square.png", "larkfield-slate-2.square.svg", "larkfield-slate-2.wide.png", "larkfield-slate-2.wide.svg", "larkfield-slate-3.square.png",
            "larkfield-slate-3.square.svg", "larkfield-slate-3.wide.png", "larkfield-slate-3.wide.svg", "ranking.square.png", "ranking.square.svg", "ranking.wide.png", "ranking.wide.svg"],
            Directory.GetFiles(folder.File("c")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Contains("larkfield-slate-3,bench-balanced,total/documentation,Documentation,", File.ReadAllText(Path.Combine(folder.File("t"), "lines.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public void Json_is_the_list_of_score_documents() =>
        Assert.Equal(2, JsonDocument.Parse(Fixscore.Run("report", Demo("larkfield-slate-2"), Demo("larkfield-slate-3"), "--json").Out).RootElement.GetArrayLength());

    [Fact]
    public void A_generation_that_is_not_among_the_records_is_a_usage_problem()
    {
        var ran = Fixscore.Run("report", Demo("larkfield-slate-2"), "--generation", "larkfield-slate-2", "larkfield-slate-9");
        Assert.Equal(2, ran.Code);
        Assert.Contains("There is no record 'larkfield-slate-9' in this report.", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_given_twice_is_a_usage_problem() => Assert.Equal(2, Fixscore.Run("report", Demo("larkfield-slate-2"), Demo("larkfield-slate-2")).Code);
}
