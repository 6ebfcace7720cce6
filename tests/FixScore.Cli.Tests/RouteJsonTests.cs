using System.Text.Json;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

/// <summary>
/// Routes as JSON. Steps are counted by hand after Regulation (EU) 2023/1669 Annex I (20): a step ends with the removal of a part
/// or with a change of tool.
/// </summary>
public sealed class RouteJsonTests
{
    static JsonElement Run(params string[] more) => JsonDocument.Parse(Fixscore.RunOn(Torch.Record, ["route", "-", "--json", .. more]).Out).RootElement;

    static JsonElement Part(string id, params string[] more) => Run(["--part", id, .. more]).GetProperty("routes")[0];

    static string[] Names(JsonElement element) => [.. element.EnumerateObject().Select(member => member.Name)];

    [Fact]
    public void Each_part_has_a_route_in_the_order_of_the_record()
    {
        var document = Run();
        Assert.Equal(["record", "routes"], Names(document));
        Assert.Equal("brackwater-torch", document.GetProperty("record").GetString());
        Assert.Equal(["housing", "cover", "cell", "switch", "panel", "board"], document.GetProperty("routes").EnumerateArray().Select(each => each.GetProperty("part").GetString()!));
    }

    // Cover out: one. Plug by hand opens the second, the pick in place of the driver begins the third.
    [Fact]
    public void A_route_has_its_costs_proof_operations_tools_risk_and_recorded_ways() => Assert.Equal(
        """
        {"part":"cell","reachable":true,"cost":"steps","steps":3,"operations":3,"seconds":{"min":1255.5,"max":1275.5},"optimal":true,"lowerBound":3,"sequence":["unscrew-cover","unplug-cell","peel-cell"],"tools":["driver","pick"],"atRisk":["cell"],"recorded":[{"sequence":"maker-cell","by":"maker","steps":3,"operations":3,"seconds":{"min":1255.5,"max":1275.5}}]}
        """, JsonSerializer.Serialize(Part("cell")));

    [Fact]
    public void Numbers_are_plain_without_needless_zeros()
    {
        var cover = Part("cover");
        Assert.Equal(("1", "30"), (cover.GetProperty("steps").GetRawText(), cover.GetProperty("seconds").GetRawText()));
        Assert.Equal("1255.5", Part("cell").GetProperty("seconds").GetProperty("min").GetRawText());
    }

    // A hand lifts the switch out in the step that is open, an unknown tool begins one more.
    [Fact]
    public void Unknown_tools_are_a_range_of_steps_and_no_time_is_null()
    {
        var route = Part("switch");
        Assert.Equal("""{"min":2,"max":3}""", JsonSerializer.Serialize(route.GetProperty("steps")));
        Assert.Equal(JsonValueKind.Null, route.GetProperty("seconds").ValueKind);
    }

    [Fact]
    public void What_only_damage_frees_is_not_reachable_and_shown_with_what_it_damages()
    {
        var route = Part("panel");
        Assert.Equal(["part", "reachable", "why", "cost", "steps", "operations", "seconds", "optimal", "lowerBound", "sequence", "tools", "damages"], Names(route));
        Assert.False(route.GetProperty("reachable").GetBoolean());
        Assert.All(["steps", "operations", "seconds", "lowerBound"], member => Assert.Equal(JsonValueKind.Null, route.GetProperty(member).ValueKind));
        Assert.Equal("""["break-panel"]["pick"]["housing","panel"]""", string.Concat(((string[])["sequence", "tools", "damages"]).Select(member => JsonSerializer.Serialize(route.GetProperty(member)))));
    }

    [Fact]
    public void A_part_of_which_nothing_is_known_is_neither_reachable_nor_not()
    {
        var route = Part("board");
        Assert.Equal(["part", "reachable", "why", "cost", "steps", "operations", "seconds", "optimal", "lowerBound", "sequence", "tools"], Names(route));
        Assert.Equal(JsonValueKind.Null, route.GetProperty("reachable").ValueKind);
        Assert.Equal(0, route.GetProperty("sequence").GetArrayLength());
    }

    [Theory]
    [InlineData("steps", "3")]
    [InlineData("operations", "3")]
    [InlineData("seconds", "1265.5")]
    public void The_bound_is_in_the_unit_of_the_cost_and_of_seconds_the_middle(string cost, string bound)
    {
        var route = Part("cell", "--cost", cost);
        Assert.Equal((cost, bound), (route.GetProperty("cost").GetString(), route.GetProperty("lowerBound").GetRawText()));
    }

    // The pick is taken up with nothing in hand: no change of tool unless that reading is asked for.
    [Theory]
    [InlineData("no-change", 1)]
    [InlineData("change", 2)]
    public void How_the_first_tool_counts_can_be_chosen(string reading, int steps)
    {
        var open = Tablets.Changed(Torch.Record, record =>
        {
            foreach (var joint in record["joints"]!.AsArray()) joint!.AsObject().Remove("under");
        });
        var route = JsonDocument.Parse(Fixscore.RunOn(open, "route", "-", "--json", "--part", "cell", "--first-tool", reading).Out).RootElement.GetProperty("routes")[0];
        Assert.Equal(steps, route.GetProperty("steps").GetInt32());
    }

    [Fact]
    public void An_id_wins_over_a_role_and_a_role_gives_all_its_parts()
    {
        var twice = Tablets.Changed(Torch.Record, record => (record["parts"]![5]!["role"], record["parts"]![3]!["role"]) = ("cell", "battery"));
        string[] Asked(string part) => [.. JsonDocument.Parse(Fixscore.RunOn(twice, "route", "-", "--json", "--part", part).Out).RootElement
            .GetProperty("routes").EnumerateArray().Select(each => each.GetProperty("part").GetString()!)];
        Assert.Equal(["cell"], Asked("cell"));
        Assert.Equal(["cell", "switch"], Asked("battery"));
    }

    [Fact]
    public void Several_records_are_a_list_in_the_order_asked_for()
    {
        using var folder = new TemporaryFolder();
        var list = JsonDocument.Parse(Fixscore.Run("route", folder.Write("b.json", Torch.Record), folder.Write("a.json", Tablets.Slate2), "--part", "battery", "--json").Out).RootElement;
        Assert.Equal(["brackwater-torch", "larkfield-slate-2"], list.EnumerateArray().Select(each => each.GetProperty("record").GetString()!));
    }

    [Fact]
    public void Json_does_not_depend_on_the_culture() =>
        Assert.Equal(Fixscore.RunOn(Torch.Record, "route", "-", "--json").Out, Fixscore.RunOn(Torch.Record, "route", "-", "--json", "--culture", "de-DE").Out);
}
