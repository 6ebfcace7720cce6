using System.Numerics;

namespace FixScore.Numbers;

/// <summary>The product of value^(weight / sum of weights), correctly rounded.</summary>
/// <remarks>
/// A. Ziv, Fast evaluation of elementary mathematical functions with correctly rounded last bit, ACM TOMS 17(3), 1991
/// (from memory): enclose the true value, and compute with more digits until both ends round alike.
///
/// That ends because the true value G is never halfway between two roundings. Let the weights be integers p with
/// sum W, which a common factor makes them, and the values n / 10^s with n &lt; 10^24. Halfway means G = M 10^k with M odd.
/// Then M^W 10^(kW) = product of n^p / 10^(sp), and as M is odd, product of n^p = M^W 10^j with j >= 0.
/// With 24 digits kept, M has 25: product of n^p >= M^W >= 10^(24 W); but every n is below 10^24. Contradiction.
/// With 28 places kept, k = -29 and every s can be taken as 28: M^W = 10^W times an integer, but M is odd.
/// </remarks>
internal static class GeometricMean
{
    /// <summary>Weights and values above zero, values of at most 24 significant digits.</summary>
    internal static decimal Of(ReadOnlySpan<(decimal Weight, decimal Value)> terms)
    {
        for (var arithmetic = FixedPoint.Ordinary; ; arithmetic = arithmetic.Doubled())
        {
            var (low, high) = Enclose(terms, arithmetic);
            var rounded = low.ToDecimal();
            if (rounded == high.ToDecimal()) return rounded;
        }
    }

    private static (Rational Low, Rational High) Enclose(ReadOnlySpan<(decimal Weight, decimal Value)> terms, FixedPoint arithmetic)
    {
        var (mantissa, exponent) = arithmetic.Exp(MeanLogarithm(terms, arithmetic));
        var unit = BigInteger.One << (arithmetic.Bits - exponent);
        return (new(mantissa - arithmetic.Error, unit), new(mantissa + arithmetic.Error, unit));
    }

    private static BigInteger MeanLogarithm(ReadOnlySpan<(decimal Weight, decimal Value)> terms, FixedPoint arithmetic)
    {
        var places = 0;
        foreach (var (weight, _) in terms) places = Math.Max(places, weight.Scale);

        var (sum, weights) = (BigInteger.Zero, BigInteger.Zero);
        foreach (var (weight, value) in terms)
        {
            var whole = Decimals.Mantissa(weight) * PowersOfTen.Get(places - weight.Scale);
            sum += whole * arithmetic.Ln(value);
            weights += whole;
        }

        return sum / weights;
    }
}
