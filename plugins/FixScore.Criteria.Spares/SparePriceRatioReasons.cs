using FixScore.Records;

namespace FixScore.Criteria.Spares;

/// <summary>What <see cref="SparePriceRatioCriterion"/> says: one reason for each spare, with its points.</summary>
sealed class SparePriceRatioReasons(PartContext context)
{
    static readonly Pointer DevicePrice = Pointer.Root.Child("device").Child("price");

    readonly SpareOfferReasons offer = new(context);

    public Reason NoSpares() => offer.NoSpares();

    public IEnumerable<Reason> Of(SparePriceRatioFacts facts, Spare spare, Interval points)
    {
        if (spare.IsNotSold())
        {
            yield return offer.NotSold(spare);
            yield break;
        }
        yield return ReasonOf(facts, spare) with { Points = points };
        if (!spare.OnlyBundledWith.IsEmpty)
            yield return Reason.Of(
                "bundle-price", "The spare for {part} is only sold together with {bundled}: its price is that of the bundle.",
                [context.Case.At(spare)], ("part", spare.Part), ("bundled", string.Join(", ", spare.OnlyBundledWith)));
    }

    public IEnumerable<Missing> Missing(SparePriceRatioFacts facts)
    {
        var missing = offer.Missing(facts.Spares, spare => Open(facts, spare));
        var isSold = facts.Spares.Listed.Any(spare => !spare.IsNotSold());
        return facts.Device is null && isSold ? missing.Append(new(Pointer.Root.Child("device"), "price")) : missing;
    }

    Reason ReasonOf(SparePriceRatioFacts facts, Spare spare)
    {
        var ratio = facts.Of(spare);
        (string, Value) part = ("part", spare.Part);
        return ratio.Comparison switch
        {
            PriceComparison.Comparable => Reason.Of(
                "price-ratio", "The spare for {part} costs {ratio} of the price of the device.", At(spare),
                part, ("ratio", OpenRange.Shown(ratio.Range, null))),
            PriceComparison.DifferentCurrencies => Reason.Of(
                "different-currencies", "The spare for {part} is priced in {currency}, the device in {deviceCurrency}: not compared.", At(spare),
                part, ("currency", spare.Price!.Currency), ("deviceCurrency", facts.Device!.Currency)),
            PriceComparison.DifferentTax => Reason.Of(
                "different-tax", "Only one of the prices of the spare for {part} and of the device includes tax: not compared.", At(spare), part),
            PriceComparison.TaxUnknown => Reason.Of(
                "tax-unknown", "Whether tax is in the prices of the spare for {part} and of the device is not known: not compared.", At(spare), part),
            _ => Reason.Of("price-unknown", "The price of the spare for {part}, or of the device, is not known.", [context.Case.At(spare)], part),
        };
    }

    IEnumerable<Pointer> At(Spare spare) => [context.Case.At(spare), DevicePrice];

    static IEnumerable<string> Open(SparePriceRatioFacts facts, Spare spare) => facts.Of(spare).Comparison switch
    {
        PriceComparison.Comparable => facts.Of(spare).Range.IsExact ? [] : ["price.amount"],
        PriceComparison.PriceUnknown => spare.Price is null ? ["price"] : [],
        PriceComparison.DifferentCurrencies => ["price in the currency of the device"],
        _ => ["price with tax stated as for the device"],
    };
}
