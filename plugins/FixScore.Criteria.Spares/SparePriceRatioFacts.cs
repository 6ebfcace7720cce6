using FixScore.Records;

namespace FixScore.Criteria.Spares;

/// <summary>What a part's spares cost, as shares of the device.</summary>
/// <param name="Spares">The spares.</param>
/// <param name="Device">Price of the device; <c>null</c> when unknown.</param>
sealed record SparePriceRatioFacts(PartSpares Spares, Price? Device)
{
    /// <summary>Whether no price of a spare that may be on sale can be set against one of the device.</summary>
    public bool IsUnknown => Spares.IsUnknown
        || !Spares.Listed.All(spare => spare.IsNotSold()) && Spares.Listed.All(spare => spare.IsNotSold() || Device is null || spare.Price is null);

    public static SparePriceRatioFacts Of(TeardownCase source, Part part) => new(PartSpares.Of(source, part), source.Record.Device.Price);

    public PriceRatio Of(Spare spare) => PriceRatio.Of(spare.Price, Device);
}
