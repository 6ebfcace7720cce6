using System.Numerics;

namespace FixScore.Numbers;

/// <summary>Rounding of decimals, always once and in decimal.</summary>
internal static class Rounding
{
    /// <summary>The value to a number of places after the point (0 to 28), without trailing zeros and never -0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The places or the mode are out of range.</exception>
    internal static decimal To(decimal value, int places, RoundingMode mode) =>
        Decimals.Trim(decimal.Round(value, places, Midpoint(mode)));

    /// <summary>The value half-even to 24 significant digits: what every value in a score goes through.</summary>
    /// <exception cref="OverflowException">The value rounds beyond the range of decimal.</exception>
    internal static decimal ToSignificant(decimal value) =>
        BigInteger.Abs(Decimals.Mantissa(value)) < PowersOfTen.Get(Rational.Digits)
            ? Decimals.Trim(value)
            : ((Rational)value).ToDecimal();

    private static MidpointRounding Midpoint(RoundingMode mode) => mode switch
    {
        RoundingMode.HalfUp => MidpointRounding.AwayFromZero,
        RoundingMode.HalfEven => MidpointRounding.ToEven,
        RoundingMode.Down => MidpointRounding.ToZero,
        _ => throw new ArgumentOutOfRangeException(nameof(mode), mode, "Not a rounding mode."),
    };
}
