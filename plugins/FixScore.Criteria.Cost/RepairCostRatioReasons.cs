using System.Collections.Immutable;
using System.Globalization;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Cost;

/// <summary>What <see cref="RepairCostRatioCriterion"/> says.</summary>
sealed class RepairCostRatioReasons(PartContext context)
{
    readonly TeardownCase source = context.Case;
    readonly Part part = context.Part;

    public ImmutableArray<Reason> NotReachable(Route route, decimal points) =>
    [
        Reason.Of("unreachable", "No recorded route frees part {part} without damage.", [source.At(part)], ("part", part.Id)) with { Points = points },
        .. route.Why is { } why ? [why] : ImmutableArray<Reason>.Empty,
    ];

    public Reason NoSpare(SpareOffer offer, decimal points) => Reason.Of(
        "no-spare", "Nobody can have a spare for part {part}.", AtSpares(offer), ("part", part.Id)) with { Points = points };

    public IEnumerable<Reason> Of(RepairCostRatioFacts facts, RepairCost cost, SpareOffer offer, Interval points)
    {
        yield return Ratio(cost, offer) with { Points = points };
        if (offer.MayBeNone)
            yield return Reason.Of(
                "spare-not-certain", "Perhaps nobody can have a spare for part {part}; the score reaches down to the lowest.",
                AtSpares(offer), ("part", part.Id)) with { Points = context.Scale.Min };
        yield return Labour(facts);
        if (facts.IsAssumed)
            yield return Reason.Of(
                "reassembly-assumed", "Putting together is assumed to take {factor} times as long as taking apart: not all of it was observed.",
                AtWay(facts), ("factor", context.Get(RepairCostRatioOptions.Reassembly)));
        if (context.Get(RepairCostRatioOptions.Waiting) != Waiting.Count)
            yield return Reason.Of("waiting-left-out", "Waiting with hands free is not paid for; the route was chosen with it.", AtWay(facts));
        if (!facts.Route.IsOptimal)
            yield return Reason.Of(
                "not-proven", "The search for the fastest route to part {part} met its limit, so labour and consumables have no upper end.",
                [source.At(part)], ("part", part.Id));
        if (!facts.Bonds.IsEmpty)
            yield return Reason.Of(
                "adhesive-not-priced", "New adhesive for {bonds} is priced only as far as operations name it among what they use up.",
                facts.Bonds.Select(source.At), ("bonds", string.Join(", ", facts.Bonds.Select(bond => bond.Id))));
    }

    Reason Ratio(RepairCost cost, SpareOffer offer) => Reason.Of(
        "cost-ratio",
        "Replacing part {part} costs {cost}: spare {spare}, consumables {consumables}, labour {labour}. The device costs {price}; the share is {share}.",
        [source.At(part), .. AtSpares(offer), RepairCostRatioMissing.Device],
        ("part", part.Id), ("cost", Shown(cost.Total, cost)), ("spare", Shown(cost.Spare, cost)), ("consumables", Shown(cost.Consumables, cost)),
        ("labour", Shown(cost.Labour, cost)), ("price", Shown(cost.Device.Amount, cost)), ("share", ShownShare(cost)));

    Reason Labour(RepairCostRatioFacts facts) => Reason.Of(
        "labour", "Labour: {seconds} to take apart along the fastest route, {reassembly} to put together, at {rate} an hour.",
        AtWay(facts),
        ("seconds", Shown(facts.Seconds, "s")), ("reassembly", Shown(facts.Reassembly, "s")),
        ("rate", Value.Of(context.Get(RepairCostRatioOptions.LabourRate), source.Record.Device.Price!.Currency)));

    IEnumerable<Pointer> AtSpares(SpareOffer offer) =>
        offer.Listed.IsEmpty ? [Pointer.Root.Child("spares")] : offer.Listed.Select(source.At);

    IEnumerable<Pointer> AtWay(RepairCostRatioFacts facts) => facts.Route.Way!.Stops.Select(stop => source.At(stop.Operation));

    static Value ShownShare(RepairCost cost) => cost.Total.Max is null || cost.Device.Amount.Min is null or 0
        ? string.Create(CultureInfo.InvariantCulture, $"at least {cost.Share.Low:0.####}")
        : cost.Share;

    static Value Shown(Quantity amount, RepairCost cost) => Shown(amount, cost.Device.Currency);

    static Value Shown(Quantity amount, string unit) => amount switch
    {
        { Min: { } low, Max: { } high } => Value.Of(new Interval(low, high), unit),
        { Max: { } high } => string.Create(CultureInfo.InvariantCulture, $"at most {high:0.####} {unit}"),
        { Min: { } low } => string.Create(CultureInfo.InvariantCulture, $"at least {low:0.####} {unit}"),
        _ => "unknown",
    };
}
