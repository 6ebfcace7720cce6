using System.Text;
using System.Text.Json;

namespace FixScore.Acceptance.Tests;

public sealed class ScoreAndVerifyTests
{
    [Theory]
    [InlineData("larkfield-slate-2", "bench-balanced")]
    [InlineData("larkfield-slate-3", "bench-limiting")]
    [InlineData("ostravane-plinth-11", "owner-first")]
    [InlineData("brindlewick-pane-10", "workshop-first")]
    public void Each_demo_tablet_scores_explains_and_verifies(string record, string profile)
    {
        using var folder = new TemporaryFolder();
        var scored = Fixscore.Run("score", Fixscore.Record(record), "--profile", profile, "--explain", "--out", folder.File("s.json"));
        Assert.Equal((0, ""), (scored.Code, scored.Error));
        Assert.Contains("/joints/", scored.Out, StringComparison.Ordinal);
        var verified = Fixscore.Run("verify", folder.File("s.json"), "--record", Fixscore.Record(record), "--strict");
        Assert.Equal(0, verified.Code);
        Assert.Contains("identical", verified.Out, StringComparison.OrdinalIgnoreCase);
    }

    // The three worked examples that are shipped with the schemas belong together.
    [Fact]
    public void The_worked_example_of_a_score_is_the_score_of_the_other_two()
    {
        static string Example(string name) => Path.Combine(AppContext.BaseDirectory, "Examples", name);
        var verified = Fixscore.Run("verify", Example("score.example.json"), "--record", Example("record.example.json"), "--profile", Example("profile.example.json"));
        Assert.Equal((0, ""), (verified.Code, verified.Error));
    }

    [Fact]
    public void A_line_that_only_gates_look_at_stands_above_its_roles()
    {
        static string Example(string name) => Path.Combine(AppContext.BaseDirectory, "Examples", name);
        var shown = Fixscore.Run("score", Example("record.example.json"), "--profile", Example("profile.example.json"));
        Assert.Contains("Parts tied to the board", shown.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Verifying_against_another_record_exits_with_1_and_names_the_first_difference()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(0, Fixscore.Run("score", Fixscore.Record("larkfield-slate-2"), "--profile", "bench-balanced", "--out", folder.File("s.json")).Code);
        var verified = Fixscore.Run("verify", folder.File("s.json"), "--record", Fixscore.Record("larkfield-slate-3"));
        Assert.Equal(1, verified.Code);
        Assert.Contains("/record/id", verified.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_gives_one_document_for_one_record_and_a_list_for_several()
    {
        var one = Fixscore.Run("score", Fixscore.Record("larkfield-slate-2"), "--profile", "bench-balanced", "--json");
        var two = Fixscore.Run("score", Fixscore.Record("larkfield-slate-2"), Fixscore.Record("larkfield-slate-3"), "--profile", "bench-balanced", "--json");
        Assert.Equal("fixscore-score/1", JsonDocument.Parse(one.Out).RootElement.GetProperty("format").GetString());
        Assert.Equal(2, JsonDocument.Parse(two.Out).RootElement.GetArrayLength());
    }

    [Fact]
    public void A_record_comes_from_standard_input_and_a_byte_order_mark_is_skipped()
    {
        var text = File.ReadAllBytes(Fixscore.Record("larkfield-slate-2"));
        var piped = Fixscore.Run([0xEF, 0xBB, 0xBF, .. text], [], "score", "-", "--profile", "bench-balanced", "--json");
        Assert.Equal(0, piped.Code);
        Assert.Equal(Fixscore.Run("score", Fixscore.Record("larkfield-slate-2"), "--profile", "bench-balanced", "--json").Out, piped.Out);
    }

    [Fact]
    public void Starting_points_are_valid_and_score()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(0, Fixscore.Run("new", "record", "--out", folder.File("r.json")).Code);
        Assert.Equal(0, Fixscore.Run("new", "profile", "--out", folder.File("p.json")).Code);
        Assert.Equal(0, Fixscore.Run("validate", folder.File("r.json"), folder.File("p.json")).Code);
        Assert.Equal(0, Fixscore.Run("score", folder.File("r.json"), "--profile", folder.File("p.json")).Code);
        Assert.Equal(0, Fixscore.Run("new", "record", "--from", Fixscore.Record("ostravane-plinth-11"), "--out", folder.File("next.json")).Code);
        Assert.Equal(0, Fixscore.Run("validate", folder.File("next.json")).Code);
    }

    [Fact]
    public void The_schema_of_profiles_names_the_options_of_what_is_installed()
    {
        var schema = Fixscore.Run("profiles", "--schema");
        Assert.Equal(0, schema.Code);
        JsonDocument.Parse(schema.Out);
        foreach (var word in (string[])["adhesive-strength", "heatBands", "togetherBands", "serialisedUnknown", "yearsWanted"])
            Assert.Contains(word, schema.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_named_like_markup_or_a_terminal_command_stays_text()
    {
        var hostile = File.ReadAllText(Fixscore.Record("larkfield-slate-2"))
            .Replace("two-cell battery pack", "[red]\\u001b[2J<script>alert(1)</script>\\u202Eevil", StringComparison.Ordinal);
        var shown = Fixscore.Run(Encoding.UTF8.GetBytes(hostile), [], "score", "-", "--profile", "bench-balanced", "--explain");
        Assert.Equal(0, shown.Code);
        Assert.Contains("[red]", shown.Out, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', shown.Out);
        Assert.DoesNotContain('\u202E', shown.Out);
    }
}
