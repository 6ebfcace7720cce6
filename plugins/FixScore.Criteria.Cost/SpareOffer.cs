using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Cost;

/// <summary>Spares of a part, or of what is replaced with it. The cheapest that can be had counts.</summary>
/// <param name="Listed">The spares listed, in the order of the record.</param>
/// <param name="IsNone">Whether there surely is no spare that anyone can have.</param>
/// <param name="MayBeNone">Whether it is open that anyone can have one.</param>
/// <param name="Price">What it costs; <c>null</c> when no price is known that can be compared with the device's.</param>
sealed record SpareOffer(ImmutableArray<Spare> Listed, bool IsNone, bool MayBeNone, Quantity? Price)
{
    public static SpareOffer Of(TeardownCase source, Part part)
    {
        var (record, group) = (source.Record, source.Derive<PartGroups>().Of(part.Id));
        ImmutableArray<Spare> listed = [.. record.Spares.Where(spare => group.Holds(spare.Part))];
        ImmutableArray<Spare> possible = [.. listed.Where(spare => !spare.Audience.Is(Audience.Nobody))];
        ImmutableArray<Spare> certain = [.. possible.Where(spare => !spare.Audience.MayBe(Audience.Nobody))];
        var none = possible.IsEmpty && (!listed.IsEmpty || record.Spares is { IsRecorded: true, Count: 0 });
        return new(listed, none, certain.IsEmpty, record.Device.Price is { } device ? Cheapest(possible, certain, device) : null);
    }

    static Quantity? Cheapest(ImmutableArray<Spare> possible, ImmutableArray<Spare> certain, Price device)
    {
        Quantity?[] prices = [.. possible.Select(spare => Money.Comparable(spare.Price, device))];
        if (prices.All(price => price is null)) return null;
        // Without one that is certain, any of them may be the only one.
        decimal?[] highs = [.. (certain.IsEmpty ? possible : certain).Select(spare => Money.Comparable(spare.Price, device)?.Max)];
        var high = certain.IsEmpty && highs.Contains(null) ? null : certain.IsEmpty ? highs.Max() : highs.Min();
        return new(prices.Min(price => price?.Min ?? 0), high);
    }
}
