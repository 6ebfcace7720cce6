using System.Collections.Immutable;

namespace FixScore.Criteria.Disassembly;

/// <summary>Options of <see cref="FastenerReuseCriterion"/>.</summary>
static class FastenerReuseOptions
{
    // Regulation (EU) 2023/1669 Annex IV point 5: 5, 3 and 1 points; it has no level for what is neither.
    public static Option<Levels> Levels { get; } = Options.Levels(
        "levels", FixScore.Levels.Of(("reusable", 1m), ("resupplied", 0.5m), ("removable", 0m)),
        "Points for the worst fastener undone. Defaults: Regulation (EU) 2023/1669 Annex IV point 5.", "neither");

    public static ImmutableArray<Option> All { get; } =
        [Levels, WayOptions.From, WayOptions.Route, WayOptions.FirstTool, Options.NoLevel];
}
