using System.Collections.Immutable;

namespace FixScore.Criteria.Disassembly;

/// <summary>Options of <see cref="ToolAccessCriterion"/>.</summary>
static class ToolAccessOptions
{
    // Regulation (EU) 2023/1669 Annex IV point 5: 5, 4, 3, 2 and 1 points; specialised tools are on general sale (Annex I (43)).
    public static Option<Levels> Levels { get; } = Options.Levels(
        "levels",
        FixScore.Levels.Of(
            ("none", 1m), ("basic", 0.75m), ("with-spare", 0.5m), ("with-product", 0.25m), ("commercial", 0m), ("specialised", 0m)),
        "Points for the tool that is hardest to have. Defaults: Regulation (EU) 2023/1669 Annex IV point 5.", "proprietary");

    public static ImmutableArray<Option> All { get; } =
        [Levels, WayOptions.From, WayOptions.Route, WayOptions.FirstTool, Options.NoLevel];
}
