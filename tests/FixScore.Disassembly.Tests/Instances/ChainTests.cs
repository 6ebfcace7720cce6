using FixScore.Records;
using FixScore.Testing;

namespace FixScore.Disassembly.Tests.Instances;

/// <summary>A chain of parts, each joined to the next.</summary>
public sealed class ChainTests
{
    // Identity: the n - 1 cuts of a chain of n parts can be made in (n - 1)! orders; values written out.
    [Theory]
    [InlineData(3, 2)]
    [InlineData(4, 6)]
    [InlineData(5, 24)]
    public void Its_joints_can_be_undone_in_every_order(int parts, int orders) => Assert.Equal(orders, Orders.Of(Chain(parts)).Count());

    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void An_end_takes_one_cut_a_middle_part_two_and_all_parts_every_cut(int parts)
    {
        var source = new RecordCase(Chain(parts));
        Assert.Equal("cut0", source.RouteTo("part0").Way!.Order());
        Assert.Equal("cut0-cut1", source.RouteTo("part1").Way!.Order());
        Assert.Equal(parts - 1, source.RouteToAll(source.Record.Parts.Select(part => part.Id)).Operations);
    }

    static TeardownRecord Chain(int parts)
    {
        var builder = new RecordBuilder();
        for (var i = 0; i < parts; i++) builder.Part($"part{i}");
        for (var i = 0; i < parts - 1; i++)
            builder.Joint($"joint{i}", [$"part{i}", $"part{i + 1}"], JointKind.Other).Operation($"cut{i}", OperationAction.Other, [], [$"joint{i}"]);
        return builder.Build();
    }
}
