using System.Text.Json;
using System.Text.Json.Nodes;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

public sealed class RequirementsTests
{
    static readonly string[] Members = ["rule", "source", "article", "status", "why", "pointers", "caution"];

    /// <summary>Asks for the three laws on pairing alone.</summary>
    static readonly string[] OnPairing = ["requirements", "-", "--set", "us-co-hb24-1121", "--set", "us-or-sb-1596", "--set", "us-wa-hb-1483"];

    /// <summary>A tablet that ties its display; what procedures do for it was tried with an open boot lock only.</summary>
    static byte[] Refusing => Tablets.Changed(Tablets.Plinth, record =>
    {
        foreach (var swap in record["swaps"]!.AsArray().Where(swap => (string?)swap!["procedure"] != "none")) swap!["lockState"] = "unlocked";
    });

    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    public void Findings_are_told_set_by_set_with_source_places_and_caution(string culture)
    {
        var ran = Fixscore.RunOn(Refusing, [.. OnPairing, "--culture", culture]);
        Assert.Equal((1, ""), (ran.Code, ran.Error));
        Approved.Matches($"requirements{(culture.Length > 0 ? "-" + culture : "")}", ran.Out);
    }

    [Fact]
    public void What_does_not_apply_is_told_once_for_all_rules() => Approved.Matches("requirements-not-applicable", Fixscore.RunOn(Tablets.Slate2, OnPairing).Out);

    [Fact]
    public void Routes_spares_and_documents_are_told_as_well() => Approved.Matches(
        "requirements-battery", Fixscore.RunOn(Tablets.Slate2, "requirements", "-", "--set", "eu-2023-1542", "--date", "2027-03-01").Out);

    [Fact]
    public void What_a_procedure_restores_is_unknown_and_exits_with_0()
    {
        var ran = Fixscore.RunOn(Tablets.Plinth, "requirements", "-", "--set", "us-co-hb24-1121");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Approved.Matches("requirements-unknown", ran.Out);
    }

    [Fact]
    public void Json_of_one_record_is_an_object_with_just_these_members()
    {
        var ran = Fixscore.RunOn(Refusing, [.. OnPairing, "--json"]);
        var root = JsonNode.Parse(ran.Out)!.AsObject();
        Assert.Equal(1, ran.Code);
        Assert.Equal(["record", "findings"], root.Select(member => member.Key));
        Assert.Equal("ostravane-plinth-11", (string?)root["record"]);
        Assert.All(root["findings"]!.AsArray(), finding => Assert.Equal(Members, finding!.AsObject().Select(member => member.Key)));
        Assert.Equal(
            ["us-co-hb24-1121/blocked-part", "us-co-hb24-1121/reduced-function", "us-co-hb24-1121/misleading-alert"],
            root["findings"]!.AsArray().Take(3).Select(finding => (string)finding!["rule"]!));
        var reduced = root["findings"]![1]!;
        Assert.Equal("not-met", (string?)reduced["status"]);
        Assert.Equal(["/parts/0", "/parts/1", "/swaps/2", "/swaps/2/checks/1"], reduced["pointers"]!.AsArray().Select(pointer => (string)pointer!));
    }

    [Fact]
    public void Json_does_not_depend_on_the_culture() =>
        Assert.Equal(Fixscore.RunOn(Refusing, "requirements", "-", "--json").Out, Fixscore.RunOn(Refusing, "requirements", "-", "--json", "--culture", "de-DE").Out);

    [Fact]
    public void Json_of_several_records_is_a_list_in_the_order_asked_for()
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.Run("requirements", folder.Write("b.json", Tablets.Slate3), folder.Write("a.json", Refusing), "--json");
        Assert.Equal(1, ran.Code);
        Assert.Equal(["larkfield-slate-3", "ostravane-plinth-11"],
            JsonDocument.Parse(ran.Out).RootElement.EnumerateArray().Select(each => each.GetProperty("record").GetString()!));
    }

    // Oregon SB 1596 from 1 January 2025 (secondary), the other two from 1 January 2026 (read).
    [Theory]
    [InlineData("2024-12-31", "not-applicable", "not-applicable", "not-applicable")]
    [InlineData("2025-12-31", "not-applicable", "not-met", "not-applicable")]
    [InlineData("2026-01-01", "not-met", "not-met", "not-met")]
    public void A_day_can_be_asked_for(string date, string colorado, string oregon, string washington)
    {
        var findings = JsonNode.Parse(Fixscore.RunOn(Refusing, "requirements", "-", "--date", date, "--json").Out)!["findings"]!.AsArray();
        Assert.Equal([colorado, oregon, washington],
            findings.Where(finding => ((string)finding!["rule"]!).EndsWith("/reduced-function", StringComparison.Ordinal)).Select(finding => (string)finding!["status"]!));
        Assert.Contains($"\nasked for {date}\n", Fixscore.RunOn(Refusing, "requirements", "-", "--date", date).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_day_that_of_the_assessment_is_asked_for()
    {
        var earlier = Tablets.Changed(Refusing, record => record["assessment"]!["date"] = "2024-12-31");
        var ran = Fixscore.RunOn(earlier, "requirements", "-");
        Assert.Equal(0, ran.Code);
        Assert.Contains("\nasked for 2024-12-31, the day of the assessment\n", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Sets_can_be_named_several_times_and_come_in_the_order_of_their_ids()
    {
        var ran = Fixscore.RunOn(Refusing, "requirements", "-", "--set", "us-wa-hb-1483", "--set", "us-co-hb24-1121", "--json");
        Assert.Equal(["us-co-hb24-1121", "us-wa-hb-1483"],
            JsonNode.Parse(ran.Out)!["findings"]!.AsArray().Select(finding => ((string)finding!["rule"]!).Split('/')[0]).Distinct());
    }

    [Fact]
    public void An_unknown_set_is_a_usage_error_that_names_the_near_one()
    {
        var ran = Fixscore.RunOn(Refusing, "requirements", "-", "--set", "us-or-sb-1569");
        Assert.Equal((2, "", "There is no set of requirements 'us-or-sb-1569'. Did you mean 'us-or-sb-1596'?\n"), (ran.Code, ran.Out, ran.Error));
    }

    [Theory]
    [InlineData("2026-13-01")]
    [InlineData("01.07.2026")]
    public void What_is_no_day_is_a_usage_error(string date) => Assert.Equal(2, Fixscore.RunOn(Refusing, "requirements", "-", "--date", date).Code);

    [Fact]
    public void A_record_that_cannot_be_used_ends_the_run_with_3_and_no_findings()
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.Run("requirements", folder.Write("fine.json", Refusing), folder.Write("broken.json", "{}"u8));
        Assert.Equal((3, ""), (ran.Code, ran.Out));
        Assert.Contains("broken.json", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_set_that_throws_ends_the_run_with_4_and_is_named()
    {
        var ran = Fixscore.RunOn(Tablets.Slate2, "requirements", "-", "--trust-once", "--plugin", FailingPlugin.File);
        Assert.Equal((4, ""), (ran.Code, ran.Out));
        Assert.StartsWith("The requirement set test.demands of FixScore.Cli.Tests failed (InvalidOperationException).", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_set_that_is_not_asked_cannot_fail() =>
        Assert.Equal(0, Fixscore.RunOn(Tablets.Slate2, "requirements", "-", "--trust-once", "--plugin", FailingPlugin.File, "--set", "us-co-hb24-1121").Code);
}
