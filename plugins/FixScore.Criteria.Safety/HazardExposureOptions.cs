using System.Collections.Immutable;

namespace FixScore.Criteria.Safety;

/// <summary>How several hazards become one score; the words of option <c>combine</c>.</summary>
enum Combine
{
    Worst,
    Count,
}

/// <summary>What it means that hazards of an operation or part were not recorded; the words of option <c>hazardsUnknown</c>.</summary>
enum WhenHazardsUnknown
{
    Widen,
    None,
}

/// <summary>Options of <see cref="HazardExposureCriterion"/>. The default points are own judgement, no source.</summary>
static class HazardExposureOptions
{
    public static readonly Option<Levels> Levels = Options.Levels(
        "levels",
        FixScore.Levels.Of(
            (HazardWords.HeatedCell, 0m), ("mains-capacitor", 0m), ("lithium-cell", 0.3m), ("flammable-solvent", 0.3m), ("laser", 0.4m), ("fumes", 0.5m),
            ("hot-surface", 0.6m), ("glass", 0.6m), ("spring-tension", 0.7m), ("sharp-edge", 0.8m), ("strong-magnet", 0.9m), ("static-sensitive", 0.95m),
            (HazardWords.None, 1m)),
        "Points for the worst hazard met; heated-cell is a lithium cell in work with heat, none is no hazard at all.");

    public static readonly Option<Combine> Combine = Options.Choice(
        "combine", Safety.Combine.Worst, "Whether the worst hazard counts, or how many different ones there are.");

    public static readonly Option<Bands> CountBands = Options.Bands(
        "countBands", FixScore.Bands.Linear((0, 1m), (5, 0m)), "hazards", "Points for the number of different hazards, where option combine counts them.");

    public static readonly Option<WhenHazardsUnknown> HazardsUnknown = Options.Choice(
        "hazardsUnknown", WhenHazardsUnknown.Widen, "Whether hazards that were not recorded for an operation or part may be any, or are none.");

    public static ImmutableArray<Option> All { get; } = [Levels, Combine, CountBands, HazardsUnknown, Options.NoLevel];
}
