using FixScore.Records;

namespace FixScore.Disassembly;

/// <summary>How easily a tool is had, best first (Regulation (EU) 2023/1669 Annex IV point 5, Annex I (42) to (44)).</summary>
public enum ToolLevel
{
    /// <summary>Bare hands.</summary>
    None,

    /// <summary>On the law's list of basic tools.</summary>
    Basic,

    /// <summary>Comes with the spare part, or is offered free with it.</summary>
    WithSpare,

    /// <summary>Comes with the product, or is offered free with it.</summary>
    WithProduct,

    /// <summary>On sale to the general public.</summary>
    Commercial,

    /// <summary>On sale to the general public, made for this trade or product.</summary>
    Specialised,

    /// <summary>Not on sale to the general public.</summary>
    Proprietary,
}

/// <summary>Tool levels, seen from the part that is replaced. Thread safe.</summary>
public static class ToolLevels
{
    /// <summary>What the level of <paramref name="tool"/> can be when <paramref name="part"/> is replaced; the better of its class and its supply.</summary>
    /// <exception cref="KeyNotFoundException">No part of the record has this id.</exception>
    public static OneOf<ToolLevel> Of(TeardownCase source, string part, Tool tool)
    {
        var group = source.Derive<PartGroups>().Of(part);
        var supply = tool.SuppliedWith.Any(group.Holds) ? ToolLevel.WithSpare
            : tool.SuppliedWith.Contains(Tool.Product) ? ToolLevel.WithProduct : ToolLevel.Proprietary;
        return new([.. tool.Class.Possible().Select(OfClass).Select(level => level < supply ? level : supply).Distinct().Order()]);
    }

    static ToolLevel OfClass(ToolClass @class) => @class switch
    {
        ToolClass.Basic => ToolLevel.Basic,
        ToolClass.Commercial => ToolLevel.Commercial,
        ToolClass.Specialised => ToolLevel.Specialised,
        _ => ToolLevel.Proprietary,
    };
}
