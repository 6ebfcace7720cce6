using System.Text.Json;
using System.Text.Json.Nodes;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

/// <summary>The next swap trial, as text and as JSON.</summary>
public sealed class SwapsPlanTests
{
    static byte[] Contradicting => Tablets.Changed(Tablets.Slate2, node => node["swaps"]!.AsArray().Add(JsonNode.Parse("""
        {"id": "again", "host": "unit-b", "installed": {"rear-camera": "unit-a"}, "lockState": "locked", "software": "2.8.1", "procedure": "none", "checks": [{"function": "all", "result": "works"}]}
        """)));

    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    public void The_plan_tells_what_goes_where_what_to_check_and_what_follows(string culture)
    {
        var ran = Fixscore.RunOn(Tablets.Slate2, "swaps", "plan", "-", "--culture", culture);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Approved.Matches($"swaps-plan{(culture.Length > 0 ? "-" + culture : "")}", ran.Out);
        Assert.DoesNotContain(ran.Out.Split('\n'), line => line.Length > 80);
    }

    [Fact]
    public void Fixed_trials_stand_beside_it() => Approved.Matches("swaps-plan-fixed",
        Fixscore.RunOn(Tablets.Slate2, "swaps", "plan", "-", "--fixed", "--at-most", "2", "--objective", "minutes", "--prior", "button=0.5").Out);

    [Fact]
    public void A_context_without_trials_asks_for_a_control_first() =>
        Approved.Matches("swaps-plan-control", Fixscore.RunOn(Tablets.Slate2, "swaps", "plan", "-", "--lock-state", "unlocked", "--software", "2.8.1").Out);

    [Fact]
    public void As_data_it_names_host_installed_parts_costs_and_bound()
    {
        var ran = Fixscore.RunOn(Tablets.Slate2, "swaps", "plan", "-", "--json", "--fixed");
        using var document = JsonDocument.Parse(ran.Out);
        var root = document.RootElement;
        Assert.Equal("larkfield-slate-2", root.GetProperty("record").GetString());
        Assert.Equal("unit-a", root.GetProperty("next").GetProperty("host").GetString());
        Assert.All(root.GetProperty("next").GetProperty("installed").EnumerateObject(), part => Assert.Equal("unit-b", part.Value.GetString()));
        Assert.Equal(4, root.GetProperty("naive").GetProperty("oneAtATime").GetDecimal());
        Assert.True(root.GetProperty("optimal").GetBoolean());
        Assert.InRange(root.GetProperty("expectedTrials").GetDecimal(), 1, 2);
        Assert.Equal(root.GetProperty("expectedTrials").GetDecimal(), root.GetProperty("bound").GetDecimal());
        Assert.True(root.GetProperty("expectedMinutes").GetDecimal() < root.GetProperty("naive").GetProperty("oneAtATimeMinutes").GetDecimal());
        Assert.Equal(3, root.GetProperty("fixed").GetProperty("trials").GetArrayLength());
        Assert.Equal("invented", root.GetProperty("assumptions").GetProperty("priors").GetString()![..8], ignoreCase: true);
        Assert.Equal(root.GetProperty("candidates").GetArrayLength(), root.GetProperty("tree").GetProperty("open").GetInt32());
    }

    [Fact]
    public void Trials_that_contradict_one_another_end_it_with_1()
    {
        var ran = Fixscore.RunOn(Contradicting, "swaps", "plan", "-", "--json");
        using var document = JsonDocument.Parse(ran.Out);
        Assert.Equal((1, "contradiction", JsonValueKind.Null),
            (ran.Code, document.RootElement.GetProperty("obstacle").GetString(), document.RootElement.GetProperty("next").ValueKind));
        Assert.Contains("contradict one another", Fixscore.RunOn(Contradicting, "swaps", "plan", "-").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void One_device_is_no_pair()
    {
        var record = Tablets.Changed(Tablets.Slate2, node =>
        {
            node["assessment"]!["units"]![1]!["modelCode"] = "LS2-US";
        });
        Assert.Contains("two whole devices", Fixscore.RunOn(record, "swaps", "plan", "-").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{\"about\": \"Ours.\", \"roles\": {\"button\": 0.2}}", 0, "Ours.")]
    [InlineData("{\"roles\": {\"button\": 1}}", 3, "from 0.001 to 0.999")]
    [InlineData("{\"role\": {}}", 3, "'role' is not one of")]
    [InlineData("{\"other\": \"x\"}", 3, "'other' has no number")]
    [InlineData("[]", 3, "no JSON object")]
    [InlineData("{", 3, "no JSON (line 1)")]
    [InlineData("{\"other\": 0.1, \"other\": 0.2}", 3, "stands twice")]
    [InlineData("{\"\\ud800\": 0.1}", 3, "half of a surrogate pair")]
    public void Priors_are_read_from_a_file(string text, int code, string says)
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.RunOn(Tablets.Slate2, "swaps", "plan", "-", "--prior", folder.Write("priors.json", System.Text.Encoding.UTF8.GetBytes(text)));
        Assert.Equal(code, ran.Code);
        Assert.Contains(says, ran.All, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--prior", "button=often")]
    [InlineData("--prior", "button=0")]
    [InlineData("--prior", "button=")]
    [InlineData("--at-most", "0")]
    [InlineData("--objective", "money")]
    [InlineData("--lock-state", "open")]
    public void What_cannot_be_meant_is_a_usage_error(string option, string value) =>
        Assert.Equal(2, Fixscore.RunOn(Tablets.Slate2, "swaps", "plan", "-", option, value).Code);
}
