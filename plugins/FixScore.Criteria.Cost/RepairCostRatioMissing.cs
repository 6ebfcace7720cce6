using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Cost;

/// <summary>What would narrow an answer of <see cref="RepairCostRatioCriterion"/>.</summary>
sealed class RepairCostRatioMissing(PartContext context)
{
    readonly TeardownCase source = context.Case;

    public static Pointer Device { get; } = Pointer.Root.Child("device");

    /// <summary>Without these there is no answer.</summary>
    public IEnumerable<Missing> Needed(Route route, SpareOffer offer)
    {
        var price = source.Record.Device.Price;
        if (route.Reachability == Reachability.Unknown)
            yield return new(route.Why is { Pointers: [var at, ..] } ? at : source.At(context.Part), route.Why?.Text ?? "operations that free the part");
        if (price is null) yield return new(Device, "price");
        else if (price.TaxIncluded is null) yield return new(Device, "price.taxIncluded");
        else if (price.Amount.Max == 0) yield return new(Device, "price above 0");
        if (offer.Listed.IsEmpty)
            yield return new(source.Record.Spares.IsRecorded ? Pointer.Root.Child("spares") : Pointer.Root, $"spares: one for {context.Part.Id}");
        else if (price is { TaxIncluded: not null } && offer.Price is null)
            foreach (var missing in Prices(offer, price)) yield return missing;
    }

    /// <summary>With these the answer would be narrower.</summary>
    public IEnumerable<Missing> Narrowing(RepairCostRatioFacts facts, SpareOffer offer, Price device) =>
    [
        .. device.Amount.IsExact ? [] : new[] { new Missing(Device, "price.amount, exact") },
        .. Prices(offer, device),
        .. offer.Listed.Where(spare => !spare.Audience.IsExact && spare.Audience.MayBe(Audience.Nobody)).Select(spare => new Missing(source.At(spare), "audience")),
        .. facts.Route.Way!.Stops.SelectMany(stop => Times(stop.Operation, facts)),
        .. facts.Route.Way!.Consumes.Distinct(StringComparer.Ordinal).SelectMany(id => Consumables(id, device)),
    ];

    IEnumerable<Missing> Prices(SpareOffer offer, Price device) =>
        from spare in offer.Listed
        where !spare.Audience.Is(Audience.Nobody)
        let obstacle = Money.Obstacle(spare.Price, device)
        where obstacle is not null
        select new Missing(source.At(spare), obstacle);

    IEnumerable<Missing> Times(Operation operation, RepairCostRatioFacts facts)
    {
        if (OperationTime.Of(operation) is null) yield return new(source.At(operation), "seconds, or footage with times");
        else if (context.Get(RepairCostRatioOptions.Waiting) == Waiting.LeaveOut && operation.WaitSeconds is null)
            yield return new(source.At(operation), "waitSeconds");
        if (OperationTime.Known(operation.ReassemblySeconds) is null) yield return new(source.At(operation), "reassemblySeconds");
    }

    IEnumerable<Missing> Consumables(string id, Price device) =>
        from consumable in source.Record.Consumables
        where consumable.Id == id
        let obstacle = Money.Obstacle(consumable.Price, device)
        where obstacle is not null
        select new Missing(source.At(consumable), obstacle);
}
