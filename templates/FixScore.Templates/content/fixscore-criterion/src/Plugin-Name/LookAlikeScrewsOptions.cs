using System.Collections.Immutable;
using FixScore;

namespace PluginNamespace;

/// <summary>Options of <see cref="LookAlikeScrewsCriterion"/>. The defaults are own judgement, no source.</summary>
static class LookAlikeScrewsOptions
{
    public static readonly Option<decimal> ToldApart = Options.Number(
        "toldApartMm", 1, 0, 20, "mm", "Screws that differ by more than this in diameter or length are told apart by eye.");

    public static readonly Option<Bands> ShareBands = Options.Bands(
        "shareBands", Bands.Linear((0, 1), (1, 0)), "share", "Points for the share of places whose screw can be mistaken.");

    public static ImmutableArray<Option> All { get; } = [ToldApart, ShareBands];
}
