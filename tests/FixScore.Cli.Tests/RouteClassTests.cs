using System.Text.Json;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

/// <summary>
/// Classes of EN 45554:2020, letters from memory; tables A.1, A.2, A.4 and A.5 as Regulations (EU) 2023/1669 and 2023/1670 name them.
/// </summary>
public sealed class RouteClassTests
{
    static string Classes(byte[] record, string part) => JsonSerializer.Serialize(
        JsonDocument.Parse(Fixscore.RunOn(record, "route", "-", "--json", "--classes", "--part", part).Out).RootElement.GetProperty("routes")[0].GetProperty("classes"));

    // New tape comes with the cell, the pick is made for this trade; of the plug neither place nor skill was noted.
    [Theory]
    [InlineData("cover", """{"fasteners":"A","tools":"A","workingEnvironment":"B","skill":"A","spareParts":null,"information":"B-C"}""")]
    [InlineData("cell", """{"fasteners":"A","tools":"B","workingEnvironment":"B-C","skill":"B-D","spareParts":"A","information":"B-C"}""")]
    [InlineData("switch", """{"fasteners":"A-C","tools":"A-D","workingEnvironment":"B-C","skill":"A-D","spareParts":null,"information":"B-C"}""")]
    [InlineData("panel", """{"fasteners":"C","tools":"E","workingEnvironment":null,"skill":"E","spareParts":"D-E","information":"B-C"}""")]
    [InlineData("board", """{"fasteners":null,"tools":null,"workingEnvironment":null,"skill":null,"spareParts":null,"information":"B-C"}""")]
    public void The_worst_along_the_route_counts_and_what_is_not_known_is_a_range(string part, string classes) => Assert.Equal(classes, Classes(Torch.Record, part));

    [Theory]
    [InlineData("commercial", "C")]
    [InlineData("proprietary", "D")]
    [InlineData("basic", "A")]
    public void A_tool_is_classed_by_how_it_is_had(string @class, string letter) =>
        Assert.Contains($"\"tools\":\"{letter}\"", Classes(Tablets.Changed(Torch.Record, record => record["tools"]![1]!["class"] = @class), "cell"), StringComparison.Ordinal);

    [Fact]
    public void A_tool_that_comes_with_the_spare_part_is_as_good_as_a_basic_one() => Assert.Contains("\"tools\":\"A\"",
        Classes(Tablets.Changed(Torch.Record, record => record["tools"]![1]!["suppliedWith"] = new System.Text.Json.Nodes.JsonArray("cell")), "cell"), StringComparison.Ordinal);

    [Fact]
    public void Tape_that_does_not_come_with_the_spare_part_is_removable_only() => Assert.Contains("\"fasteners\":\"B\"",
        Classes(Tablets.Changed(Torch.Record, record => record["spares"]![0]!["fastenersIncluded"] = false), "cell"), StringComparison.Ordinal);

    [Fact]
    public void Lists_without_entries_say_that_nobody_gets_it()
    {
        var bare = Tablets.Changed(Torch.Record, record => (record["spares"], record["documentation"]) = (new System.Text.Json.Nodes.JsonArray(), new System.Text.Json.Nodes.JsonArray()));
        Assert.Contains("\"spareParts\":\"D-E\",\"information\":\"D-E\"", Classes(bare, "cover"), StringComparison.Ordinal);
    }
}
