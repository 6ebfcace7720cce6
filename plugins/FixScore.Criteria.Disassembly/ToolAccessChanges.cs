using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Disassembly;

/// <summary>Design changes for <see cref="ToolAccessCriterion"/>: work that a basic tool can do, and tools that come with the spare.</summary>
static class ToolAccessChanges
{
    public static IEnumerable<DesignChange> Of(DeviceContext context)
    {
        var used = context.JudgedParts.SelectMany(part => HardToHave(context, part).Select(tool => (Part: part.Id, Tool: tool)))
            .GroupBy(each => each.Tool.Id, StringComparer.Ordinal).ToArray();
        return [.. used.Select(each => each.First().Tool).Where(tool => tool.HeatC is null && tool.Solvent is null).Select(tool => Basic(context.Case, tool)),
            .. used.Select(each => Supply(context.Case, each.First().Tool, [.. each.Select(use => use.Part)]))];
    }

    static IEnumerable<Tool> HardToHave(DeviceContext context, Part part)
    {
        var asked = context.For(part);
        if (WayReasons.Barred(asked, JudgedWays.Of(asked).Route) is not null) return [];
        return ToolAccessFacts.Of(asked).Used.Where(each => each.Possible.Any(level => level > ToolLevel.WithSpare)).Select(each => each.Tool);
    }

    static DesignChange Basic(TeardownCase source, Tool tool) => DesignPatch.Empty.Set(source.At(tool), "class", Word.Of(ToolClass.Basic))
        .As($"basic-{tool.Id}", Reason.Of(
            "basic-tool", "Make the work done with {tool} ({name}) work for a basic tool, such as by screws with a common drive.", [source.At(tool)],
            ("tool", tool.Id), ("name", tool.Name)));

    static DesignChange Supply(TeardownCase source, Tool tool, string[] parts) => DesignPatch.Empty
        .Set(source.At(tool), "suppliedWith", DesignPatch.Words(tool.SuppliedWith.Union(parts, StringComparer.Ordinal)))
        .As($"supply-{tool.Id}", Reason.Of(
            "supply-tool", "Deliver {tool} ({name}) with the spares for {parts}.", [source.At(tool)],
            ("tool", tool.Id), ("name", tool.Name), ("parts", string.Join(", ", parts))));
}
