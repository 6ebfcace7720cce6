using FixScore.Disassembly;

namespace FixScore.Criteria.Cost;

/// <summary>What replacing a part costs as a share of the price of the device.</summary>
/// <remarks>
/// <para>(spare + consumables + (seconds to take apart + seconds to put together) / 3600 x labour rate) / price of the device.
/// Seconds and consumables are those of the fastest observed route, chosen with its waits and by the middle of ranges; the
/// rate is option <c>labourRate</c>. Waiting with hands free is left out unless option <c>waiting</c> counts it. Where an
/// operation lacks <c>reassemblySeconds</c>, all of putting together is option <c>reassembly</c> times taking apart; with 0
/// nothing limits it. Of several spares the cheapest counts; what is replaced with the part shares its spares. New adhesive is
/// priced only as far as operations name it among what they use up.</para>
/// <para>Ranges give the exact hull. A price in another currency, or not surely on the same tax basis as the device's, is not
/// known. Unknown times, consumables without a price and a route not proven fastest have no upper end. Without a price of the
/// device, a price of the spare or a route, the answer is unknown. A part that cannot be freed without damage, or whose spare
/// nobody can have, has the lowest of the scale.</para>
/// <para>Source: own judgement, no source. Thread safe.</para>
/// </remarks>
public sealed class RepairCostRatioCriterion : IPartCriterion
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "repair-cost-ratio", 1, "Repair cost ratio", "cost of replacing the part, as a share of the price of the device", "share",
        Direction.LessIsBetter, "own judgement, no source",
        [
            "device.price", "device.price.amount", "device.price.currency", "device.price.taxIncluded", "spares", "spares[].part", "spares[].audience",
            "spares[].price", "spares[].price.amount", "spares[].price.currency", "spares[].price.taxIncluded", "consumables[].price",
            "consumables[].price.amount", "consumables[].price.currency", "consumables[].price.taxIncluded", "operations", "operations[].tools",
            "operations[].orTools", "operations[].after", "operations[].directlyAfter", "operations[].undoes", "operations[].moves",
            "operations[].holdsBy", "operations[].removes", "operations[].damages", "operations[].phase", "operations[].seconds",
            "operations[].waitSeconds", "operations[].reassemblySeconds", "operations[].footage", "operations[].consumes", "milestones", "joints",
            "joints[].joins", "joints[].kind", "joints[].integral", "joints[].under", "parts[].on", "parts[].reach",
        ],
        RepairCostRatioOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(PartContext context)
    {
        var (scale, reasons, missing) = (context.Scale, new RepairCostRatioReasons(context), new RepairCostRatioMissing(context));
        var route = context.Case.RouteTo(context.Part.Id, RouteCost.Seconds);
        if (route.Reachability == Reachability.Unreachable) return Outcome.Scored(scale.Min, reasons.NotReachable(route, scale.Min));
        if (!context.Case.Record.Joints.IsRecorded) return Outcome.Unknown(new Missing(Pointer.Root, "joints"));
        var offer = SpareOffer.Of(context.Case, context.Part);
        if (offer.IsNone) return Outcome.Scored(scale.Min, reasons.NoSpare(offer, scale.Min));
        Missing[] needed = [.. missing.Needed(route, offer)];
        return needed.Length > 0 ? Outcome.Unknown([.. needed]) : Priced(context, route, offer, reasons, missing);
    }

    static Outcome Priced(PartContext context, Route route, SpareOffer offer, RepairCostRatioReasons reasons, RepairCostRatioMissing missing)
    {
        var device = context.Case.Record.Device.Price!;
        var facts = RepairCostRatioFacts.Of(context, route, device);
        var cost = RepairCost.Of(facts, offer.Price!.Value, context.Get(RepairCostRatioOptions.LabourRate), device);
        var points = context.Points(RepairCostRatioOptions.Bands, cost.Share);
        if (offer.MayBeNone) points = points.Hull(context.Scale.Min);
        return Outcome.Scored(points, [.. reasons.Of(facts, cost, offer, points)]) with { Missing = [.. missing.Narrowing(facts, offer, device)] };
    }
}
