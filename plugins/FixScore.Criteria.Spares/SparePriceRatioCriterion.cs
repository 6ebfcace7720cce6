using FixScore.Records;

namespace FixScore.Criteria.Spares;

/// <summary>The price of a spare as a share of the price of the device.</summary>
/// <remarks>
/// <para>Price of the spare / price of the device; less is better. Of several spares for one part the best counts. A spare of
/// any part of a group counts for the whole group. A spare that is only sold with others has the price of the bundle. A spare
/// with audience <c>nobody</c> cannot be bought, which is the lowest; who else can buy it does not matter here.</para>
/// <para>Prices compare only in one currency and with tax stated alike, in both or in neither; otherwise the ratio may be
/// anything. Prices that are ranges give the range from least / most to most / least, without upper end where the device may
/// cost nothing. An empty list says that nothing is sold. Without a list, with a list that does not name the part, or where
/// the device or all spares lack a price, the answer is unknown. Without recorded joints the groups are unknown, so that any
/// spare may serve the part too.</para>
/// <para>Quotients are decimal, rounded half-even to 28 digits. Rounding never reverses an order, so a range holds all it must;
/// a ratio that is nearer to a limit of the bands than the rounding counts as at the limit.</para>
/// <para>Source: that the ratio counts: code de l'environnement (France) art. R541-214; the default bands are from memory of
/// the orders of 29 December 2020, a weak source. Thread safe.</para>
/// </remarks>
public sealed class SparePriceRatioCriterion : IPartCriterion
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "spare-price-ratio", 1, "Spare price ratio", "price of a spare / price of the device", "share", Direction.LessIsBetter,
        "Ratio: code de l'environnement (France) art. R541-214; bands: from memory of the orders of 29 December 2020, weak",
        [
            "device.price", "device.price.taxIncluded", "joints", "joints[].integral", "spares", "spares[].part", "spares[].audience",
            "spares[].price", "spares[].price.taxIncluded", "spares[].onlyBundledWith",
        ],
        SparePriceRatioOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(PartContext context)
    {
        var facts = SparePriceRatioFacts.Of(context.Case, context.Part);
        var reasons = new SparePriceRatioReasons(context);
        if (facts.Spares.IsNone) return Outcome.Scored(context.Scale.Min, reasons.NoSpares());
        if (facts.IsUnknown) return Outcome.Unknown([.. reasons.Missing(facts)]);
        Interval PointsOf(Spare spare) => spare.PointsOf(context, context.Points(SparePriceRatioOptions.Bands, facts.Of(spare).Range));
        return Outcome.Scored(facts.Spares.Best(PointsOf), [.. facts.Spares.Listed.SelectMany(spare => reasons.Of(facts, spare, PointsOf(spare)))]) with
        {
            Missing = [.. reasons.Missing(facts)],
        };
    }
}
