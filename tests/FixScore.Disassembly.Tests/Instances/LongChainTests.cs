using FixScore.Records;
using FixScore.Testing;

namespace FixScore.Disassembly.Tests.Instances;

/// <summary>More operations than a word of the machine has bits: nothing changes there.</summary>
public sealed class LongChainTests
{
    const int Layers = 70;

    [Theory]
    [InlineData(RouteCost.Steps, 63)]
    [InlineData(RouteCost.Steps, 64)]
    [InlineData(RouteCost.Steps, 69)]
    [InlineData(RouteCost.Operations, 64)]
    [InlineData(RouteCost.Operations, 69)]
    [InlineData(RouteCost.Seconds, 69)]
    public void The_way_to_a_layer_is_every_layer_above_it(RouteCost cost, int layer)
    {
        var route = new RecordCase(Stack()).RouteTo($"layer{layer}", cost);
        Assert.Equal(Enumerable.Range(0, layer + 1).Select(above => $"take{above}"), route.Way!.Operations);
        Assert.Equal((true, (decimal?)(layer + 1)), (route.IsOptimal, route.LowerBound));
        Assert.Equal(new Interval(layer + 1, layer + 1), route.Steps);
    }

    [Fact]
    public void What_can_never_be_done_is_told_of_all()
    {
        var record = Stack() is var stack ? stack with { Operations = [.. stack.Operations.Skip(1)] } : stack;
        Assert.Equal(Enumerable.Range(1, Layers - 1).Select(layer => $"'take{layer}' can never be done: nothing that can be done removes 'layer{layer - 1}'."),
            new RouteCheck().Check(new RecordCase(record)).Where(problem => problem.Code == "operation-never-possible").Select(problem => problem.Message));
    }

    static TeardownRecord Stack()
    {
        var builder = new RecordBuilder();
        for (var i = 0; i <= Layers; i++) builder.Part($"layer{i}");
        for (var i = 0; i < Layers; i++)
        {
            builder.Joint($"joint{i}", [$"layer{i}", $"layer{i + 1}"], JointKind.Other).Operation(
                $"take{i}", OperationAction.Other, [], [$"joint{i}"], [$"layer{i}"], i == 0 ? [] : [new Condition.Removed($"layer{i - 1}")], 1);
        }
        return builder.Build();
    }
}
