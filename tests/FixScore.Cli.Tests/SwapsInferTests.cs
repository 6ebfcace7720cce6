using System.Text.Json;
using System.Text.Json.Nodes;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

/// <summary>What verdicts mean is tested with the inference; here it is how they are told.</summary>
public sealed class SwapsInferTests
{
    /// <summary>A tablet whose battery is said to be accepted and flagged, all else equal.</summary>
    static byte[] Contradictory => Tablets.Changed(Tablets.Plinth, record =>
    {
        var twin = record["swaps"]![3]!.DeepClone();
        (twin["id"], twin["checks"]![1]!["result"]) = ("battery-b-in-a-again", "works");
        record["swaps"]!.AsArray().Insert(4, twin);
    });

    /// <summary>A tablet whose lock trials cannot be right: what comes back on relock is still lost, what never comes back works.</summary>
    static byte[] WrongLocks => Tablets.Changed(Tablets.Plinth, record =>
    {
        record["locks"]![1]!["losses"]!.AsArray().Add(new JsonObject { ["function"] = "protected-video", ["recovers"] = "never" });
        var control = record["swaps"]![0]!.DeepClone();
        (control["id"], control["lockState"]) = ("control-a-relocked", "relocked");
        control["checks"]!.AsArray().Add(new JsonObject { ["function"] = "payment", ["result"] = "works" });
        record["swaps"]!.AsArray().Add(control);
    });

    /// <summary>A tablet for which the waiting is known as a range, so that a culture has a number to write.</summary>
    static byte[] Waiting => Tablets.Changed(Tablets.Plinth, record => record["locks"]![0]!["waitDays"] = new JsonObject { ["min"] = 2.5, ["max"] = 7 });

    static byte[] Untried => Tablets.Changed(Tablets.Plinth, record =>
    {
        foreach (var list in (string[])["swaps", "findings"]) record.AsObject().Remove(list);
        record["locks"] = new JsonArray();
    });

    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    public void Verdicts_comparisons_and_lock_costs_are_told_context_by_context(string culture)
    {
        var ran = Fixscore.RunOn(Waiting, "swaps", "infer", "-", "--culture", culture);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Approved.Matches($"swaps-infer{(culture.Length > 0 ? "-" + culture : "")}", ran.Out);
    }

    [Fact]
    public void Trials_that_contradict_each_other_are_named_and_exit_with_1()
    {
        var ran = Fixscore.RunOn(Contradictory, "swaps", "infer", "-");
        Assert.Equal(1, ran.Code);
        Approved.Matches("swaps-infer-contradiction", ran.Out);
    }

    [Fact]
    public void Lock_trials_that_cannot_be_right_are_told()
    {
        var ran = Fixscore.RunOn(WrongLocks, "swaps", "infer", "-");
        Assert.Equal(0, ran.Code);
        Approved.Matches("swaps-infer-locks", ran.Out);
    }

    [Fact]
    public void Without_trials_it_is_told_that_there_are_none()
    {
        var ran = Fixscore.RunOn(Untried, "swaps", "infer", "-");
        Assert.Equal(0, ran.Code);
        Approved.Matches("swaps-infer-untried", ran.Out);
        var parts = JsonNode.Parse(Fixscore.RunOn(Untried, "swaps", "infer", "-", "--json").Out)!["parts"]!.AsArray();
        Assert.NotEmpty(parts);
        Assert.All(parts, part => Assert.Equal(["part", "verdict", "because"], part!.AsObject().Select(member => member.Key)));
        Assert.DoesNotContain(parts, part => (string?)part!["part"] == "mainboard");
    }

    [Fact]
    public void Json_names_verdict_context_worst_result_and_trials()
    {
        var root = JsonNode.Parse(Fixscore.RunOn(Tablets.Plinth, "swaps", "infer", "-", "--json").Out)!.AsObject();
        Assert.Equal(["record", "consistent", "contradictions", "parts", "comparisons", "locks", "settle", "pairTies"], root.Select(member => member.Key));
        Assert.Equal(("ostravane-plinth-11", true), ((string?)root["record"], (bool)root["consistent"]!));
        Assert.Empty(root["contradictions"]!.AsArray());
        var display = root["parts"]!.AsArray().First(part => (string?)part!["part"] == "display-panel")!;
        Assert.Equal(["part", "verdict", "context", "worst", "because"], display.AsObject().Select(member => member.Key));
        Assert.Equal(("paired", "degraded"), ((string?)display["verdict"], (string?)display["worst"]));
        Assert.Equal("""{"lockState":"locked","software":"7.2.0","procedure":"none"}""", display["context"]!.ToJsonString());
        Assert.Equal(["display-b-in-a"], display["because"]!.AsArray().Select(id => (string)id!));
    }

    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    public void With_error_rates_it_says_how_probable_each_tie_is(string culture)
    {
        var ran = Fixscore.RunOn(Tablets.Plinth, "swaps", "infer", "-", "--false-clean", "0.05", "--false-flag", "0.01", "--culture", culture);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Approved.Matches($"swaps-infer-rates{(culture.Length > 0 ? "-" + culture : "")}", ran.Out[ran.Out.IndexOf("How probable", StringComparison.Ordinal)..]);
    }

    [Fact]
    public void Json_tells_what_settles_a_suspect_and_the_probabilities()
    {
        var root = JsonNode.Parse(Fixscore.RunOn(Tablets.Slate2, "swaps", "infer", "-", "--json", "--false-clean", "0.05").Out)!;
        var trial = root["settle"]!.AsArray().First(each => (string)each!["parts"]![0]! == "front-camera")!;
        Assert.Equal(("unit-a", "unit-b", false), ((string)trial["host"]!, (string)trial["donor"]!, (bool)trial["controlFirst"]!));
        Assert.All(root["posterior"]!.AsArray(), part => Assert.InRange((double)part!["probability"]!, 0, 1));
        Assert.Contains(root["pairTies"]!.AsArray(), tie => (string?)tie!["part"] == "rear-camera");
    }

    [Fact]
    public void An_error_rate_beyond_one_half_is_refused() => Assert.Contains(
        "'0.5' is not a rate from 0 to below 0.5 that --false-clean can take.", Fixscore.Run("swaps", "infer", "x.json", "--false-clean", "0.5").Error, StringComparison.Ordinal);

    [Fact]
    public void Json_lists_contradictions_as_sets_of_trials()
    {
        var ran = Fixscore.RunOn(Contradictory, "swaps", "infer", "-", "--json");
        var root = JsonNode.Parse(ran.Out)!;
        Assert.Equal((1, false), (ran.Code, (bool)root["consistent"]!));
        Assert.Contains("""["battery-b-in-a","battery-b-in-a-again"]""", root["contradictions"]!.AsArray().Select(set => set!.ToJsonString()));
    }

    [Fact]
    public void Json_tells_comparisons_and_lock_costs_as_data()
    {
        var root = JsonNode.Parse(Fixscore.RunOn(WrongLocks, "swaps", "infer", "-", "--json").Out)!;
        var restored = Assert.Single(root["comparisons"]!.AsArray(), each => (string?)each!["code"] == "procedure-restores" && (string?)each["function"] == "battery-health")!;
        Assert.Equal(
            ["by", "parts", "function", "first", "second", "fares", "comparable", "code", "text", "trials", "pointers"], restored.AsObject().Select(member => member.Key));
        Assert.Equal(("procedure", "better", "notification"), ((string?)restored["by"], (string?)restored["fares"], (string?)restored["second"]!["what"]));
        Assert.Equal(["loss-outlasts-recovery", "loss-not-seen", "loss-not-seen", "loss-not-seen"],
            root["locks"]!["contradictions"]!.AsArray().Select(each => (string)each!["code"]!).Order().Reverse());
        Assert.Equal((7, true), ((int)root["locks"]!["trials"]![0]!["waitDays"]!, (bool)root["locks"]!["trials"]![0]!["wipesData"]!));
    }

    [Fact]
    public void Json_does_not_depend_on_the_culture() => Assert.Equal(
        Fixscore.RunOn(Tablets.Plinth, "swaps", "infer", "-", "--json").Out, Fixscore.RunOn(Tablets.Plinth, "swaps", "infer", "-", "--json", "--culture", "de-DE").Out);

    [Fact]
    public void Json_of_several_records_is_a_list_in_the_order_asked_for()
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.Run("swaps", "infer", folder.Write("b.json", Tablets.Slate3), folder.Write("a.json", Contradictory), "--json");
        Assert.Equal(1, ran.Code);
        Assert.Equal(["larkfield-slate-3", "ostravane-plinth-11"],
            JsonDocument.Parse(ran.Out).RootElement.EnumerateArray().Select(each => each.GetProperty("record").GetString()!));
    }

    [Fact]
    public void A_record_that_cannot_be_used_ends_the_run_with_3()
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.Run("swaps", "infer", folder.Write("fine.json", Tablets.Slate3), folder.Write("broken.json", "{}"u8));
        Assert.Equal((3, ""), (ran.Code, ran.Out));
    }

    [Fact]
    public void The_group_alone_is_a_usage_error() => Assert.Equal(2, Fixscore.Run("swaps").Code);
}
