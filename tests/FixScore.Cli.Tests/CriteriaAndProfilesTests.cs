using System.Text.Json;
using System.Text.RegularExpressions;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

public sealed partial class CriteriaAndProfilesTests
{
    [Fact]
    public void Criteria_are_listed_with_what_they_measure_their_source_and_their_options() =>
        Approved.Matches("criteria", Version().Replace(Fixscore.Run("criteria").Out, "VERSION"));

    [Fact]
    public void Criteria_as_json_have_kinds_bounds_and_defaults_of_options()
    {
        var criteria = JsonDocument.Parse(Fixscore.Run("criteria", "--json").Out).RootElement.GetProperty("criteria").EnumerateArray().ToArray();
        Assert.Equal(
            [
                "adhesive-strength", "disassembly-depth", "disassembly-time", "documentation", "fastener-diversity", "fastener-reuse",
                "hazard-exposure", "lock-freedom", "part-modularity", "repair-cost-ratio", "repair-information", "software-pairing", "software-support",
                "spare-availability", "spare-price-ratio", "spare-terms", "tool-access",
            ],
            criteria.Select(each => each.GetProperty("id").GetString()!));
        var tolerance = criteria[0].GetProperty("options").EnumerateArray().Single(each => each.GetProperty("name").GetString() == "tolerance");
        Assert.Equal(("number", 0, 1), (tolerance.GetProperty("kind").GetString(), tolerance.GetProperty("min").GetInt32(), tolerance.GetProperty("max").GetInt32()));
        Assert.All(criteria.SelectMany(each => each.GetProperty("options").EnumerateArray()), option => Assert.NotEqual(JsonValueKind.Null, option.GetProperty("default").ValueKind));
    }

    [Fact]
    public void Criteria_of_a_plugin_file_are_listed_with_the_others() =>
        Assert.Contains("\ntest.throws: Throws\n", Fixscore.Run("criteria", "--trust-once", "--plugin", FailingPlugin.File).Out, StringComparison.Ordinal);

    [Fact]
    public void Profiles_are_listed_with_where_they_are_from()
    {
        using var folder = new TemporaryFolder();
        var own = folder.Write("own.json", Tablets.Changed(Installed.Resources.Bytes("profiles/bench-balanced.json"), profile => profile["id"] = "own-bench"));
        var profiles = JsonDocument.Parse(Fixscore.Run("profiles", "--profiles", folder.Path, "--json").Out).RootElement.GetProperty("profiles").EnumerateArray()
            .ToDictionary(each => each.GetProperty("id").GetString()!, each => each.GetProperty("from").GetString());
        Assert.Equal((own, "built in"), (profiles["own-bench"], profiles["bench-balanced"]));
    }

    [Fact]
    public void Profiles_as_text() => Approved.Matches("profiles", Fixscore.Run("profiles").Out);

    [Fact]
    public void A_broken_profile_in_a_folder_is_told_and_the_others_are_listed()
    {
        using var folder = new TemporaryFolder();
        folder.Write("broken.json", Tablets.Changed(Installed.Resources.Bytes("profiles/bench-balanced.json"), profile => (profile["id"], profile["root"]) = ("broken", null)));
        var ran = Fixscore.Run("profiles", "--profiles", folder.Path);
        Assert.Equal(3, ran.Code);
        Assert.Contains("broken.json:", ran.Error, StringComparison.Ordinal);
        Assert.Contains("bench-limiting", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_named()
    {
        var ran = Fixscore.Run("profiles", "--profiles", "no-such-folder");
        Assert.Equal((3, ""), (ran.Code, ran.Out));
        Assert.StartsWith("no-such-folder input-unreadable there is no such folder", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_schema_of_profiles_knows_the_criteria_of_plugins_too()
    {
        Assert.Contains("togetherBands", Fixscore.Run("profiles", "--schema").Out, StringComparison.Ordinal);
        Assert.Contains("test.throws", Fixscore.Run("profiles", "--schema", "--trust-once", "--plugin", FailingPlugin.File).Out, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"(?<=FixScore\.[A-Za-z.]+ )\d+\.\d+\.\d+")]
    private static partial Regex Version();
}
