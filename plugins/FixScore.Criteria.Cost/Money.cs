using FixScore.Records;

namespace FixScore.Criteria.Cost;

/// <summary>Amounts with open ends, and which prices can be compared. Amounts are not negative.</summary>
static class Money
{
    // Far beyond every band; stands for a share that nothing limits.
    const decimal MostShare = 1_000_000m;

    /// <summary>An amount of which nothing is known.</summary>
    public static readonly Quantity Any = new(0, null);

    /// <summary>The amount of a price, where it is in the same currency and surely on the same tax basis as the device's; else <c>null</c>.</summary>
    public static Quantity? Comparable(Price? price, Price device) => Obstacle(price, device) is null ? price!.Amount : null;

    /// <summary>What keeps a price from being compared; <c>null</c> when nothing does.</summary>
    public static string? Obstacle(Price? price, Price device) => price switch
    {
        null => "price",
        _ when price.Currency != device.Currency => $"price in {device.Currency}, like the device's: other currencies are not converted",
        { TaxIncluded: null } => "price.taxIncluded: whether the tax basis is that of the device's price",
        _ when price.TaxIncluded != device.TaxIncluded => $"price {(device.TaxIncluded == true ? "with" : "without")} tax, like the device's",
        _ => null,
    };

    public static Quantity Plus(Quantity a, Quantity b) => new((a.Min ?? 0) + (b.Min ?? 0), a.Max + b.Max);

    public static Quantity Times(Quantity amount, decimal factor) =>
        factor == 0 ? 0m : new Quantity((amount.Min ?? 0) * factor, amount.Max * factor);

    /// <summary>A cost as a share of a price, over all that both leave open.</summary>
    public static Interval Share(Quantity cost, Quantity price)
    {
        var low = price.Max is { } most ? Share(cost.Min ?? 0, most) : 0;
        return new(low, cost.Max is { } high ? Share(high, price.Min ?? 0) : MostShare);
    }

    static decimal Share(decimal cost, decimal price) => cost >= price * MostShare ? MostShare : cost / price;
}
