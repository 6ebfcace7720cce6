using System.Text;
using System.Text.Json;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

public sealed class ValidateTests
{
    static readonly byte[] Faulty = Encoding.UTF8.GetBytes("""
        {
          "format": "fixscore-record/1",
          "id": "Slate 9",
          "device": { "maker": "m", "model": "n", "kimd": "laptop" },
          "assessment": { "assessor": "a", "date": "2026-02-30", "units": [] },
          "parts": [ { "id": "p", "role": "battery" } ],
        	"joints": [ { "id": "j", "joins": ["p", "q"], "kind": "scrw", "count": -1 } ]
        }
        """.ReplaceLineEndings("\n"));

    [Fact]
    public void All_problems_come_with_place_carets_and_what_to_do()
    {
        var ran = Fixscore.RunOn(Faulty, "validate", "-");
        Assert.Equal(3, ran.Code);
        Approved.Matches("validate-problems", ran.All);
    }

    [Fact]
    public void Carets_stand_under_what_is_meant()
    {
        var lines = Fixscore.RunOn(Faulty, "validate", "-").Error.Split('\n');
        var carets = Array.FindIndex(lines, line => line.Contains("unknown-member", StringComparison.Ordinal)) + 2;
        Assert.Equal("\"kimd\"", lines[carets - 1].Substring(lines[carets].IndexOf('^', StringComparison.Ordinal), lines[carets].Count(letter => letter == '^')));
    }

    [Fact]
    public void Json_holds_the_same_problems_with_their_fields()
    {
        var problems = JsonDocument.Parse(Fixscore.RunOn(Faulty, "validate", "-", "--json").Out).RootElement.GetProperty("problems");
        var kind = problems.EnumerateArray().Single(each => each.GetProperty("code").GetString() == "unknown-member");
        Assert.Equal("<standard input>", kind.GetProperty("file").GetString());
        Assert.Equal("error", kind.GetProperty("severity").GetString());
        Assert.Equal("/device/kimd", kind.GetProperty("pointer").GetString());
        Assert.Equal((4, 43), (kind.GetProperty("line").GetInt32(), kind.GetProperty("column").GetInt32()));
        Assert.Equal("Did you mean 'kind'?", kind.GetProperty("hint").GetString());
    }

    [Fact]
    public void A_warning_says_that_it_is_one_and_the_record_is_valid()
    {
        var profile = Encoding.UTF8.GetString(FailingPlugin.Profile).Replace("\"weight\": 1, \"criterion\": \"test.throws\"", "\"weight\": 0.3, \"criterion\": \"documentation\"", StringComparison.Ordinal);
        var ran = Fixscore.RunOn(Encoding.UTF8.GetBytes(profile), "validate", "-");
        Assert.Equal(0, ran.Code);
        Assert.Contains("warning weights-look-like-a-slip", ran.Error, StringComparison.Ordinal);
        Assert.Equal("<standard input>: a valid profile, 0 errors, 1 remark\n", ran.Out);
    }

    [Fact]
    public void Records_and_profiles_are_told_apart_by_what_they_say_they_are()
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.Run("validate", folder.Write("a.json", Tablets.Slate2), folder.Write("b.json", Installed.Resources.Bytes("profiles/bench-balanced.json")));
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Contains("a.json: a valid record, nothing to remark", ran.Out.Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("b.json: a valid profile, nothing to remark", ran.Out.Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_missing_does_not_hide_the_others()
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.Run("validate", folder.File("none.json"), folder.Path, folder.Write("a.json", Faulty));
        Assert.Equal(3, ran.Code);
        foreach (var code in (string[])["input-unreadable", "input-is-a-folder", "unknown-member"]) Assert.Contains(code, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_input_is_a_problem_at_its_first_character()
    {
        var ran = Fixscore.RunOn(default, "validate", "-");
        Assert.Equal(3, ran.Code);
        Assert.StartsWith("<standard input>:1:1 ", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_of_a_megabyte_is_not_shown_in_full()
    {
        var wide = Encoding.UTF8.GetBytes("{\"format\":\"fixscore-record/1\",\"id\":\"" + new string('x', 1 << 20) + "\",\"oops\":1}");
        var ran = Fixscore.RunOn(wide, "validate", "-");
        Assert.Equal(3, ran.Code);
        Assert.DoesNotContain(ran.Error.Split('\n'), line => line.Length > 1100);
    }
}
