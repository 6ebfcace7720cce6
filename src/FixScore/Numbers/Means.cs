namespace FixScore.Numbers;

/// <summary>
/// The ways to make one value of several. Every result is the exact value of its formula, rounded half-even to 24
/// significant digits: it depends neither on the order of the terms nor on the machine. More is better throughout.
/// </summary>
/// <remarks>
/// Weights are relative and above zero; only the factors of a sum may be zero. A mean lies between the least and
/// the greatest value, provided that these have no more than 24 significant digits, as every value in a score.
/// </remarks>
internal static class Means
{
    /// <summary>Sum of weight times value, over the sum of weights: full compensation.</summary>
    /// <exception cref="ArgumentException">No term, or a weight that is not above zero.</exception>
    internal static decimal WeightedArithmetic(params ReadOnlySpan<(decimal Weight, decimal Value)> terms)
    {
        Check(terms, decimal.MinValue);
        if (Ends(terms) is var (least, greatest) && least == greatest) return Rounding.ToSignificant(least);
        Rational sum = default, weights = default;
        foreach (var (weight, value) in terms)
        {
            sum += (Rational)weight * value;
            weights += weight;
        }

        return (sum / weights).ToDecimal();
    }

    /// <summary>Product of value^(weight / sum of weights): partial compensation. A value of zero gives zero.</summary>
    /// <exception cref="ArgumentException">
    /// No term, a weight that is not above zero, a value below zero or with more than 24 significant digits.
    /// </exception>
    internal static decimal WeightedGeometric(params ReadOnlySpan<(decimal Weight, decimal Value)> terms)
    {
        Check(terms, 0);
        CheckDigits(terms);
        var (least, greatest) = Ends(terms);
        return least == 0 || least == greatest ? Decimals.Trim(least) : GeometricMean.Of(terms);
    }

    /// <summary>Sum of weights, over the sum of weight / value: the least compensation. A value of zero gives zero.</summary>
    /// <exception cref="ArgumentException">No term, a weight that is not above zero or a value below zero.</exception>
    internal static decimal WeightedHarmonic(params ReadOnlySpan<(decimal Weight, decimal Value)> terms)
    {
        Check(terms, 0);
        var (least, greatest) = Ends(terms);
        if (least == 0) return 0m;
        if (least == greatest) return Rounding.ToSignificant(least);
        Rational sum = default, weights = default;
        foreach (var (weight, value) in terms)
        {
            sum += (Rational)weight / value;
            weights += weight;
        }

        return (weights / sum).ToDecimal();
    }

    /// <summary>The least value, whatever the weights: no compensation.</summary>
    /// <exception cref="ArgumentException">No term.</exception>
    /// <exception cref="OverflowException">The least value has more than 24 digits and rounds beyond the range of decimal.</exception>
    internal static decimal Minimum(params ReadOnlySpan<(decimal Weight, decimal Value)> terms) =>
        Rounding.ToSignificant(Ends(terms).Least);

    /// <summary>Sum of factor times value. Of no terms: zero.</summary>
    /// <exception cref="ArgumentException">A factor below zero.</exception>
    /// <exception cref="OverflowException">The sum is beyond the range of decimal.</exception>
    internal static decimal Sum(params ReadOnlySpan<(decimal Factor, decimal Value)> terms)
    {
        Rational sum = default;
        foreach (var (factor, value) in terms)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(factor, nameof(terms));
            sum += (Rational)factor * value;
        }

        return sum.ToDecimal();
    }

    private static void Check(ReadOnlySpan<(decimal Weight, decimal Value)> terms, decimal least)
    {
        foreach (var (weight, value) in terms)
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(weight, nameof(terms));
            ArgumentOutOfRangeException.ThrowIfLessThan(value, least, nameof(terms));
        }

        if (terms.IsEmpty) throw new ArgumentException("A mean of nothing has no value.", nameof(terms));
    }

    // With more digits a geometric mean could lie exactly halfway between two roundings, see GeometricMean.
    private static void CheckDigits(ReadOnlySpan<(decimal Weight, decimal Value)> terms)
    {
        foreach (var (_, value) in terms)
            if (Rounding.ToSignificant(value) != value)
                throw new ArgumentException($"{PlainText.Of(value)} has more than {Rational.Digits} significant digits.", nameof(terms));
    }

    private static (decimal Least, decimal Greatest) Ends(ReadOnlySpan<(decimal Weight, decimal Value)> terms)
    {
        if (terms.IsEmpty) throw new ArgumentException("Nothing has neither a least nor a greatest value.", nameof(terms));
        var (least, greatest) = (terms[0].Value, terms[0].Value);
        foreach (var (_, value) in terms) (least, greatest) = (Math.Min(least, value), Math.Max(greatest, value));
        return (least, greatest);
    }
}
