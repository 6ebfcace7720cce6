using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

public sealed class NewTests
{
    static JsonNode Next(params string[] more)
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.Run(["new", "record", "--from", folder.Write("old.json", Tablets.Slate2), .. more]);
        Assert.Equal(0, ran.Code);
        Assert.Equal(0, Fixscore.RunOn(Encoding.UTF8.GetBytes(ran.Out), "validate", "-").Code);
        return JsonNode.Parse(ran.Out)!;
    }

    [Theory]
    [InlineData("record")]
    [InlineData("profile")]
    public void A_starting_point_is_valid_and_without_remarks(string what)
    {
        var ran = Fixscore.Run("new", what, "--id", "mine", "--date", "2026-05-01");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Equal($"<standard input>: a valid {what}, nothing to remark\n", Fixscore.RunOn(Encoding.UTF8.GetBytes(ran.Out), "validate", "-").Out);
        Assert.Equal("mine", JsonNode.Parse(ran.Out)!["id"]!.GetValue<string>());
    }

    [Fact]
    public void A_new_profile_scores_a_new_record()
    {
        using var folder = new TemporaryFolder();
        Fixscore.Run("new", "record", "--out", folder.File("r.json"));
        Fixscore.Run("new", "profile", "--out", folder.File("p.json"));
        Assert.Equal(0, Fixscore.Run("score", folder.File("r.json"), "--profile", folder.File("p.json")).Code);
    }

    [Fact]
    public void A_new_profile_asks_every_installed_criterion_with_the_same_weight()
    {
        var leaves = JsonNode.Parse(Fixscore.Run("new", "profile").Out)!["root"]!["of"]!.AsArray();
        Assert.Equal(
            [
                "adhesive-strength", "disassembly-depth", "disassembly-time", "documentation", "fastener-diversity", "fastener-reuse",
                "hazard-exposure", "lock-freedom", "part-modularity", "repair-cost-ratio", "repair-information", "software-pairing", "software-support",
                "spare-availability", "spare-price-ratio", "spare-terms", "tool-access",
            ],
            leaves.Select(leaf => leaf!["criterion"]!.GetValue<string>()));
        Assert.All(leaves, leaf => Assert.Equal(1, leaf!["weight"]!.GetValue<int>()));
    }

    [Fact]
    public void The_next_record_keeps_how_the_device_is_built()
    {
        var (old, next) = (JsonNode.Parse(Tablets.Slate2)!, Next("--id", "slate-2b", "--date", "2026-05-01"));
        Assert.Equal(("slate-2b", "2026-05-01"), (next["id"]!.GetValue<string>(), next["assessment"]!["date"]!.GetValue<string>()));
        foreach (var list in (string[])["parts", "joints", "tools", "operations"])
            Assert.Equal(old[list]!.AsArray().Select(entry => entry!["id"]!.GetValue<string>()), next[list]!.AsArray().Select(entry => entry!["id"]!.GetValue<string>()));
    }

    [Fact]
    public void The_next_record_forgets_what_happened_on_the_bench()
    {
        var next = Next();
        foreach (var list in (string[])["swaps", "locks", "evidence", "sequences", "observations", "findings"]) Assert.Null(next[list]);
        foreach (var member in (string[])["footage", "outcomes", "seconds", "waitSeconds", "reassemblySeconds", "evidence"])
            Assert.DoesNotContain(next["operations"]!.AsArray(), entry => entry![member] is not null);
    }

    [Theory]
    [InlineData("ar-SA")]
    [InlineData("th-TH")]
    public void A_day_is_read_and_written_the_same_under_other_calendars(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            Assert.Equal("2026-05-01", JsonNode.Parse(Fixscore.Run("new", "record", "--date", "2026-05-01").Out)!["assessment"]!["date"]!.GetValue<string>());
            Assert.StartsWith("20", JsonNode.Parse(Fixscore.Run("new", "record").Out)!["assessment"]!["date"]!.GetValue<string>(), StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void An_id_that_is_none_is_refused()
    {
        var ran = Fixscore.Run("new", "record", "--id", "Not An Id");
        Assert.Equal((3, ""), (ran.Code, ran.Out));
        Assert.Contains("/id", ran.Error, StringComparison.Ordinal);
    }
}
