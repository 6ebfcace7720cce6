using System.Collections.Immutable;

namespace FixScore.Criteria.Modularity;

/// <summary>How the points for what goes along and for the connection become one; the words of option <c>combine</c>.</summary>
enum Combine
{
    Lowest,
    Mean,
}

/// <summary>Options of <see cref="PartModularityCriterion"/>. The default points are own judgement, no source.</summary>
static class PartModularityOptions
{
    public static readonly Option<Bands> TogetherBands = Options.Bands(
        "togetherBands", Bands.Linear((0, 1m), (1, 0.6m), (2, 0.3m), (4, 0m)), "parts",
        "Points for the number of other parts, inert ones aside, that are replaced together with the part.");

    public static readonly Option<bool> Bundles = Options.Flag(
        "bundles", true, "Whether parts count as replaced together when the spare is only sold in a bundle with them. If so, an unlisted spare widens the score.");

    public static readonly Option<Levels> Connection = Options.Levels(
        "connection", Levels.Of(("none", 1m), ("contact", 1m), ("connector", 1m), ("solder", 0.1m)),
        "Points for the worst electrical connection to parts that stay; welds count as solder.");

    public static readonly Option<Combine> Combine = Options.Choice(
        "combine", Modularity.Combine.Lowest, "Whether the lower of both points counts, or their mean.");

    public static ImmutableArray<Option> All { get; } = [TogetherBands, Bundles, Connection, Combine, Options.NoLevel];
}
