using System.Collections.Immutable;

namespace FixScore.Criteria.Fasteners;

/// <summary>Options of <see cref="FastenerDiversityCriterion"/>. The default points are own judgement, no source.</summary>
static class FastenerDiversityOptions
{
    public static readonly Option<Bands> Bands = Options.Bands(
        "bands", FixScore.Bands.Linear((1, 1m), (2, 0.85m), (4, 0.5m), (8, 0m)), "types",
        "Points for the effective number of screw types.");

    public static ImmutableArray<Option> All { get; } = [Bands, Options.NoLevel];
}
