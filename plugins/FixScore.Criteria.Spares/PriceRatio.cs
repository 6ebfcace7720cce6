using FixScore.Records;

namespace FixScore.Criteria.Spares;

/// <summary>Whether two prices can be compared.</summary>
enum PriceComparison
{
    Comparable,
    PriceUnknown,
    DifferentCurrencies,
    DifferentTax,
    TaxUnknown,
}

/// <summary>A price as a share of another.</summary>
/// <param name="Range">All it can be; without upper end where the other may be 0 or neither end is known.</param>
/// <param name="Comparison">Whether the prices can be compared; if not, the range is everything.</param>
readonly record struct PriceRatio(Interval Range, PriceComparison Comparison)
{
    public static PriceRatio Of(Price? price, Price? whole)
    {
        var comparison = Compare(price, whole);
        return new(comparison == PriceComparison.Comparable ? Between(OpenRange.Of(price!.Amount), OpenRange.Of(whole!.Amount)) : OpenRange.Any, comparison);
    }

    static PriceComparison Compare(Price? price, Price? whole)
    {
        if (price is null || whole is null) return PriceComparison.PriceUnknown;
        if (price.Currency != whole.Currency) return PriceComparison.DifferentCurrencies;
        if (price.TaxIncluded is null || whole.TaxIncluded is null) return PriceComparison.TaxUnknown;
        return price.TaxIncluded == whole.TaxIncluded ? PriceComparison.Comparable : PriceComparison.DifferentTax;
    }

    static Interval Between(Interval price, Interval whole) => whole.High == 0
        ? OpenRange.Any
        : new(
            whole.High == OpenRange.Endless ? 0 : price.Low / whole.High,
            whole.Low == 0 || price.High == OpenRange.Endless ? OpenRange.Endless : price.High / whole.Low);
}
