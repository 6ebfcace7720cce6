using System.Collections.Immutable;

namespace FixScore.Criteria.Spares;

/// <summary>What is asked of a spare; the words of option <c>measure</c>.</summary>
enum SpareMeasure
{
    Years,
    DeliveryDays,
}

/// <summary>Options of <see cref="SpareTermsCriterion"/>.</summary>
static class SpareTermsOptions
{
    public static readonly Option<SpareMeasure> Measure = Options.Choice(
        "measure", SpareMeasure.Years, "Whether the years of availability count, or the working days until delivery.");

    // 7 years: Regulation (EU) 2023/1670 Annex II B and D 1.1(1); all else own judgement, no source.
    public static readonly Option<Bands> Bands = Options.Bands(
        "bands", FixScore.Bands.AtLeast((10, 1m), (7, 0.75m), (5, 0.4m), (3, 0.15m), (0, 0m)), "a",
        "Points for the years that a spare is kept on sale.");

    // 5 days at first, 10 days later: Regulation (EU) 2023/1670 Annex II B and D 1.1(3); all else own judgement, no source.
    public static readonly Option<Bands> DeliveryBands = Options.Bands(
        "deliveryBands", FixScore.Bands.AtMost((2, 1m), (5, 0.75m), (10, 0.4m), (20, 0.15m), (365, 0m)), "days",
        "Points for the working days until a spare comes.");

    public static ImmutableArray<Option> All { get; } = [Measure, Bands, DeliveryBands, Options.NoLevel];
}
