using FixScore.Records;

namespace FixScore.Disassembly.Tests.Instances;

/// <summary>Selective disassembly with AND/OR precedence and tool changes: eight operations, three tools.</summary>
/// <remarks>A designed instance; all values found by listing every order, independently of this code. No published source.</remarks>
public sealed class SelectiveDisassemblyTests
{
    static readonly TeardownRecord Record = new PrecedenceGraph()
        .Add("1", 2, "a")
        .Add("2", 3, "b")
        .Add("3", 5, "a", all: ["1"])
        .Add("4", 4, "b", all: ["2"])
        .Add("5", 6, "c", any: [["3", "4"]])
        .Add("6", 2, "a", all: ["1", "2"])
        .Add("7", 3, "b", all: ["6"], any: [["3", "4"]])
        .Add("8", 4, "a", all: ["7"], any: [["5", "6"]])
        .Build();

    [Theory]
    [InlineData("5", 13, "1-3-5 2-4-5")]
    [InlineData("7", 14, "1-2-4-6-7 1-2-6-4-7 2-1-4-6-7 2-1-6-4-7 2-4-1-6-7")]
    [InlineData("8", 18, "1-2-4-6-7-8 1-2-6-4-7-8 2-1-4-6-7-8 2-1-6-4-7-8 2-4-1-6-7-8")]
    public void The_quickest_way_takes_the_least_time_and_is_the_first_of_those_that_do(string target, int time, string orders)
    {
        var route = new RecordCase(Record).RouteTo($"part-{target}", RouteCost.Seconds);
        Assert.Equal((Interval)time, route.Seconds);
        Assert.Equal(orders.Split(' ')[0], route.Way!.Order());
        Assert.Equal(orders.Split(' '), Best(target, 0).Orders.Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("5", 1, 14, 2)]
    [InlineData("5", 2, 15, 2)]
    [InlineData("5", 3, 16, 2)]
    [InlineData("7", 1, 16, 2)]
    [InlineData("7", 2, 18, 2)]
    [InlineData("7", 3, 20, 2)]
    [InlineData("8", 1, 21, 2)]
    [InlineData("8", 2, 24, 2)]
    [InlineData("8", 3, 27, 2)]
    public void Where_each_change_of_tool_costs_something_few_orders_are_best(string target, int penalty, int cost, int orders)
    {
        var best = Best(target, penalty);
        Assert.Equal((cost, orders), ((int)best.Cost, best.Orders.Length));
    }

    // The orders for 5, 7 and 8 that are best with a penalty of 3 change tools once, twice and three times; a step begins with each change.
    [Theory]
    [InlineData("5", 2)]
    [InlineData("7", 3)]
    [InlineData("8", 4)]
    public void The_way_with_fewest_steps_changes_tools_least(string target, int steps)
    {
        var route = new RecordCase(Record).RouteTo($"part-{target}");
        Assert.Equal((Interval)steps, route.Steps);
        Assert.Equal(steps - 1, Orders.Changes(Record, route.Way!.Order()));
        Assert.Contains(route.Way!.Order(), Orders.Of(Record, target));
    }

    [Fact]
    public void All_eight_can_be_done_in_176_orders_of_which_32_change_tools_four_times_and_none_less()
    {
        var orders = Orders.Of(Record).ToArray();
        Assert.Equal(176, orders.Length);
        Assert.Equal(4, orders.Min(order => Orders.Changes(Record, order)));
        Assert.Equal(32, orders.Count(order => Orders.Changes(Record, order) == 4));
        Assert.Contains("2-1-3-6-4-7-5-8", orders);
    }

    [Fact]
    public void Freeing_all_eight_takes_a_step_more_than_the_four_changes()
    {
        var route = new RecordCase(Record).RouteToAll(Enumerable.Range(1, 8).Select(each => $"part-{each}"));
        Assert.Equal((Interval)5, route.Steps);
        Assert.Equal(4, Orders.Changes(Record, route.Way!.Order()));
    }

    static (decimal Cost, string[] Orders) Best(string target, int penalty)
    {
        var best = Orders.Of(Record, target).GroupBy(order => Orders.Cost(Record, order, penalty)).MinBy(orders => orders.Key)!;
        return (best.Key, [.. best]);
    }
}
