using System.Collections.Immutable;

namespace FixScore.Criteria.Spares;

/// <summary>Options of <see cref="SparePriceRatioCriterion"/>.</summary>
static class SparePriceRatioOptions
{
    // From memory of the French orders of 29 December 2020: full marks up to 10 %, none from 30 % on. A weak source.
    public static readonly Option<Bands> Bands = Options.Bands(
        "bands", FixScore.Bands.Linear((0.1m, 1m), (0.3m, 0m)), "share", "Points for the price of a spare as a share of the price of the device.");

    public static ImmutableArray<Option> All { get; } = [Bands, Options.NoLevel];
}
