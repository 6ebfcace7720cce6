using System.Collections.Immutable;

namespace FixScore.Criteria.Adhesives;

/// <summary>Options of <see cref="AdhesiveStrengthCriterion"/>. The default points are own judgement, no source.</summary>
static class AdhesiveStrengthOptions
{
    public static readonly Option<Levels> Means = Options.Levels(
        "means", Levels.Of(
            ("bare-hands", 1m), ("stretch-release", 0.9m), ("tool", 0.7m), ("solvent", 0.4m), ("heat", 0.4m), ("damage", 0m)),
        "Points for what it takes to open a bond. Where the temperature is known, heatBands replace the level heat; where it is not, the score spans both.");

    public static readonly Option<Bands> HeatBands = Options.Bands(
        "heatBands", Bands.Linear((60, 0.6m), (80, 0.45m), (100, 0.25m), (150, 0m)), "°C",
        "Points for the temperature at which a bond is opened.");

    public static readonly Option<decimal> Tolerance = Options.Number(
        "tolerance", 0.15m, 0, 1, "1",
        "How far points assumed from the means may be off, as a share of the scale. Within that a measured force decides; with 1 it alone decides, with 0 only the means do.");

    public static readonly Option<Bands> ForceBands = Options.Bands(
        "forceBands", Bands.Linear((5, 1m), (20, 0.75m), (60, 0.4m), (200, 0m)), "N",
        "Points for the force that a bond holds, where it was measured.");

    public static ImmutableArray<Option> All { get; } = [Means, HeatBands, Tolerance, ForceBands, Options.NoLevel];
}
