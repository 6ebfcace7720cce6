using System.Text.Json.Nodes;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

/// <summary>Design changes that reach a class or points.</summary>
public sealed class ImproveTests
{
    static readonly string[] ToGood = ["improve", "-", "--profile", "bench-balanced", "--to", "made to be repaired"];

    static readonly string[] Members = ["target", "now", "sets", "optimal", "lowerBound", "front", "candidates", "unusable", "withoutChanges", "tried"];

    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    public void The_smallest_sets_are_told_with_what_they_gain(string culture)
    {
        var ran = Fixscore.RunOn(Tablets.Plinth, [.. ToGood, "--culture", culture]);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Approved.Matches($"improve{(culture.Length > 0 ? "-" + culture : "")}", ran.Out);
        Assert.DoesNotContain(ran.Out.Split('\n'), line => line.Length > 80);
    }

    [Fact]
    public void Of_many_sets_the_best_are_shown_and_what_all_share() =>
        Approved.Matches("improve-many", Fixscore.RunOn(Tablets.Slate2, "improve", "-", "--profile", "bench-limiting", "--to", "75").Out);

    [Fact]
    public void What_is_reached_already_needs_no_change()
    {
        var ran = Fixscore.RunOn(Tablets.Slate3, ToGood);
        Assert.Equal(0, ran.Code);
        Approved.Matches("improve-reached", ran.Out);
    }

    [Fact]
    public void What_no_known_change_reaches_is_told_and_ends_with_1()
    {
        var ran = Fixscore.RunOn(Tablets.Slate3, "improve", "-", "--profile", "bench-balanced", "--to", "100");
        Assert.Equal((1, ""), (ran.Code, ran.Error));
        Approved.Matches("improve-out-of-reach", ran.Out);
    }

    [Fact]
    public void Too_little_effort_leaves_it_unsettled()
    {
        var ran = Fixscore.RunOn(Tablets.Slate2, "improve", "-", "--profile", "bench-balanced", "--to", "100", "--effort", "200");
        Assert.Equal(1, ran.Code);
        Assert.Contains("Not settled: no set found before the effort was spent;", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_the_sets_with_patches_and_what_was_tried()
    {
        var root = JsonNode.Parse(Fixscore.RunOn(Tablets.Plinth, [.. ToGood, "--json"]).Out)!.AsObject();
        Assert.Equal(Members, root.Select(member => member.Key));
        Assert.Equal("made to be repaired", (string?)root["target"]);
        Assert.True((bool?)root["optimal"]);
        var set = root["sets"]![0]!.AsObject();
        Assert.Equal(["changes", "total", "class"], set.Select(member => member.Key));
        Assert.Equal(["id", "text", "patch"], set["changes"]![0]!.AsObject().Select(member => member.Key));
        Assert.True((decimal?)set["total"]!["low"] >= 80);
        Assert.Equal("add", (string?)set["changes"]![0]!["patch"]![0]!["op"]);
    }

    [Fact]
    public void Points_are_a_number_in_the_json_and_no_class_is_told_where_there_is_none()
    {
        var root = JsonNode.Parse(Fixscore.RunOn(Tablets.Slate2, "improve", "-", "--profile", "bench-limiting", "--to", "72.5", "--json").Out)!.AsObject();
        Assert.Equal(72.5m, (decimal?)root["target"]);
        Assert.Equal(["changes", "total"], root["sets"]![0]!.AsObject().Select(member => member.Key));
    }

    [Fact]
    public void Json_does_not_depend_on_the_culture() =>
        Assert.Equal(Fixscore.RunOn(Tablets.Plinth, [.. ToGood, "--json"]).Out, Fixscore.RunOn(Tablets.Plinth, [.. ToGood, "--json", "--culture", "de-DE"]).Out);

    [Theory]
    [InlineData("made to be repairde", "is neither a class of bench-balanced nor a number of points. Did you mean 'made to be repaired'?")]
    [InlineData("101", "bench-balanced has points from 0 to 100; 101 is none of them.")]
    [InlineData("8,5", "is neither a class of bench-balanced nor a number of points.")]
    public void What_cannot_be_asked_for_is_a_usage_error(string to, string says)
    {
        var ran = Fixscore.RunOn(Tablets.Slate2, "improve", "-", "--profile", "bench-balanced", "--to", to);
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_that_cannot_be_used_ends_it_with_3() => Assert.Equal((3, ""), Codes(Fixscore.RunOn("{}"u8.ToArray(), ToGood)));

    [Fact]
    public void A_profile_that_is_not_for_the_device_ends_it_with_3() => Assert.Equal((3, ""),
        Codes(Fixscore.RunOn(Tablets.Changed(Tablets.Slate2, record => record["device"]!["kind"] = "laptop"), "improve", "-", "--profile", "eu-2023-1669", "--to", "B")));

    static (int, string) Codes(Ran ran) => (ran.Code, ran.Out);
}
