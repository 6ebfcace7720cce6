using System.Globalization;

namespace FixScore;

/// <summary>A number as observed: exact, or a range of which one end may be missing.</summary>
/// <remarks>
/// Not observed at all is <c>null</c>, never a quantity. <c>default</c> has no ends and says nothing.
/// Units are those of the record member that holds it. Immutable and thread safe.
/// </remarks>
/// <param name="Min">The least it can be; <c>null</c> when no lower end was stated.</param>
/// <param name="Max">The most it can be; <c>null</c> when no upper end was stated.</param>
public readonly record struct Quantity(decimal? Min, decimal? Max)
{
    /// <summary>Whether both ends are stated and equal.</summary>
    public bool IsExact => Min is not null && Min == Max;

    /// <summary>An exact number.</summary>
    public static implicit operator Quantity(decimal exact) => new(exact, exact);

    /// <summary>An exact whole number.</summary>
    public static implicit operator Quantity(int exact) => new(exact, exact);

    /// <summary>The interval this leaves open when a missing end is taken from the bounds of the quantity itself.</summary>
    /// <param name="least">What a missing lower end becomes, such as 0 for a count.</param>
    /// <param name="most">What a missing upper end becomes.</param>
    public Interval Within(decimal least, decimal most)
    {
        var low = Min ?? Math.Min(least, Max ?? least);
        return new(low, Max ?? Math.Max(most, low));
    }

    /// <summary>Invariant text: <c>4</c>, <c>3..5</c>, <c>3..</c> or <c>..5</c>.</summary>
    public override string ToString() => IsExact
        ? Min!.Value.ToString("0.############################", CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{Min:0.############################}..{Max:0.############################}");
}
