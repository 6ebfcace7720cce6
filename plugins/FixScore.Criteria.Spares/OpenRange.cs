using System.Globalization;

namespace FixScore.Criteria.Spares;

/// <summary>Amounts that are not negative and may have no upper end.</summary>
static class OpenRange
{
    /// <summary>Stands for no upper end; beyond the last limit of any bands.</summary>
    public const decimal Endless = decimal.MaxValue;

    public static readonly Interval Any = new(0, Endless);

    /// <summary>All that a quantity can be; everything when it was not observed.</summary>
    public static Interval Of(Quantity? quantity) => (quantity ?? default).Within(0, Endless);

    /// <summary>The range as a fact of a reason.</summary>
    public static Value Shown(Interval range, string? unit)
    {
        if (range == Any) return "unknown";
        return range.High < Endless ? Value.Of(range, unit) : string.Create(CultureInfo.InvariantCulture, $"{range.Low:0.####} {unit} or more");
    }
}
