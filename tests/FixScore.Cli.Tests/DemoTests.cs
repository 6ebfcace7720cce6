using System.Globalization;
using System.Text.Json;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

public sealed class DemoTests
{
    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    public void It_tells_the_story_the_rankings_the_weakest_point_and_what_is_where(string culture)
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.Run("demo", "--out", folder.Path, "--culture", culture);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Approved.Matches($"demo{(culture.Length > 0 ? "-" + culture : "")}", ran.Out.Replace(folder.Path, "DIR", StringComparison.Ordinal));
    }

    [Fact]
    public void It_writes_a_page_four_records_and_a_score_document_for_each_record_and_profile()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(0, Fixscore.Run("demo", "--out", folder.Path).Code);
        Assert.Equal(
            ["brindlewick-pane-10.bench-balanced.score.json", "brindlewick-pane-10.bench-limiting.score.json", "brindlewick-pane-10.json",
             "larkfield-slate-2.bench-balanced.score.json", "larkfield-slate-2.bench-limiting.score.json", "larkfield-slate-2.json",
             "larkfield-slate-3.bench-balanced.score.json", "larkfield-slate-3.bench-limiting.score.json", "larkfield-slate-3.json",
             "ostravane-plinth-11.bench-balanced.score.json", "ostravane-plinth-11.bench-limiting.score.json", "ostravane-plinth-11.json", "ranking.svg", "report.html", "routes.svg"],
            folder.Files);
    }

    [Fact]
    public void What_it_says_to_run_next_works()
    {
        using var folder = new TemporaryFolder();
        var commands = Fixscore.Run("demo", "--out", folder.Path).Out.Split('\n').Where(line => line.StartsWith("  fixscore ", StringComparison.Ordinal)).ToArray();
        Assert.Equal(2, commands.Length);
        foreach (var command in commands) Assert.Equal(0, Fixscore.Run(command.Trim().Split(' ')[1..]).Code);
    }

    [Fact]
    public void Json_is_the_list_of_score_documents() =>
        Assert.Equal(8, JsonDocument.Parse(Run("demo", "--json").Out).RootElement.GetArrayLength());

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    [InlineData("de-DE")]
    [InlineData("th-TH")]
    public void The_culture_of_the_process_changes_no_byte(string culture)
    {
        using var here = new TemporaryFolder();
        using var there = new TemporaryFolder();
        var plain = Fixscore.Run("demo", "--out", here.Path).Out;
        var text = In(culture, () => Fixscore.Run("demo", "--out", there.Path).Out);
        Assert.Equal(plain.Replace(here.Path, "", StringComparison.Ordinal), text.Replace(there.Path, "", StringComparison.Ordinal));
        Assert.Equal(here.Files, there.Files);
        foreach (var name in here.Files) Assert.Equal(File.ReadAllBytes(here.File(name)), File.ReadAllBytes(there.File(name)));
    }

    static Ran Run(params string[] arguments)
    {
        using var folder = new TemporaryFolder();
        return Fixscore.Run([.. arguments, "--out", folder.Path]);
    }

    static T In<T>(string culture, Func<T> run)
    {
        var (before, beforeUi) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            return run();
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (before, beforeUi);
        }
    }
}
