using System.Collections.Immutable;
using FixScore.Records;
using FixScore.Testing;
using static FixScore.Disassembly.ToolLevel;

namespace FixScore.Disassembly.Tests.Levels;

/// <summary>Regulation (EU) 2023/1669 Annex IV point 5 and Annex I (42) to (44): the better of what a tool is and how it comes.</summary>
public sealed class ToolLevelTests
{
    [Theory]
    [InlineData(ToolClass.Basic, Basic)]
    [InlineData(ToolClass.Commercial, Commercial)]
    [InlineData(ToolClass.Specialised, Specialised)]
    [InlineData(ToolClass.Proprietary, Proprietary)]
    public void A_tool_that_comes_with_nothing_has_the_level_of_its_class(ToolClass @class, ToolLevel level) => Assert.Equal([level], Of(@class));

    [Theory]
    [InlineData(ToolClass.Basic, Basic)]
    [InlineData(ToolClass.Proprietary, WithSpare)]
    public void What_comes_with_the_spare_part_is_that_well_had_at_least(ToolClass @class, ToolLevel level)
    {
        Assert.Equal([level], Of(@class, "cover"));
        Assert.Equal([level], Of(@class, "board", "rim")); // Welded to the cover, so replaced with it.
        Assert.Equal([level], Of(@class, Tool.Product, "cover"));
    }

    [Theory]
    [InlineData(ToolClass.Basic, Basic)]
    [InlineData(ToolClass.Commercial, WithProduct)]
    [InlineData(ToolClass.Proprietary, WithProduct)]
    public void What_comes_with_the_product_is_that_well_had_at_least(ToolClass @class, ToolLevel level) => Assert.Equal([level], Of(@class, "board", Tool.Product));

    [Fact]
    public void What_comes_with_the_spare_of_another_part_does_not_come() => Assert.Equal([Specialised], Of(ToolClass.Specialised, "board"));

    [Fact]
    public void A_class_nobody_observed_leaves_open_what_the_supply_does_not_settle()
    {
        Assert.Equal([Basic, Commercial, Specialised, Proprietary], Of(default(OneOf<ToolClass>)));
        Assert.Equal([Basic, WithProduct], Of(default(OneOf<ToolClass>), Tool.Product));
    }

    static ToolLevel[] Of(OneOf<ToolClass> @class, params ImmutableArray<string> with)
    {
        var source = new RecordBuilder().Part("cover").Part("rim").Part("board").Joint("moulded", ["cover", "rim"], JointKind.Weld, joint => joint with { Integral = true })
            .Tool("driver", @class, tool => tool with { SuppliedWith = with }).ToCase();
        return [.. ToolLevels.Of(source, "cover", source.Record.Tools.Single()).Stated];
    }
}
