using System.Numerics;

namespace FixScore.Numbers;

/// <summary>
/// An exact rational number: no operation rounds, only <see cref="ToDecimal"/> does, once.
/// <c>default</c> is zero. Immutable, so safe to share between threads.
/// </summary>
/// <remarks>
/// Not kept in lowest terms: the sums in a score are short, and a greatest common divisor at every step
/// costs more than the digits it saves.
/// </remarks>
internal readonly struct Rational : IComparable<Rational>
{
    /// <summary>How many significant digits a value in a score has.</summary>
    internal const int Digits = 24;

    // The most places after the point that a decimal has room for.
    private const int MostPlaces = 28;

    private readonly BigInteger _numerator;
    private readonly BigInteger _denominator;

    /// <summary>A fraction of two integers.</summary>
    /// <exception cref="DivideByZeroException">The denominator is zero.</exception>
    internal Rational(BigInteger numerator, BigInteger denominator)
    {
        if (denominator.IsZero) throw new DivideByZeroException();
        _numerator = denominator.Sign < 0 ? -numerator : numerator;
        _denominator = BigInteger.Abs(denominator);
    }

    /// <summary>-1, 0 or 1.</summary>
    internal int Sign => _numerator.Sign;

    // The default of a struct never saw a constructor: its denominator reads as one.
    private BigInteger Denominator => _denominator.IsZero ? BigInteger.One : _denominator;

    /// <summary>Every decimal is a fraction over a power of ten.</summary>
    public static implicit operator Rational(decimal value) =>
        new(Decimals.Mantissa(value), PowersOfTen.Get(value.Scale));

    /// <summary>The exact sum.</summary>
    public static Rational operator +(Rational left, Rational right) => left.Denominator == right.Denominator
        ? new(left._numerator + right._numerator, left.Denominator)
        : new((left._numerator * right.Denominator) + (right._numerator * left.Denominator), left.Denominator * right.Denominator);

    /// <summary>The same magnitude with the other sign.</summary>
    public static Rational operator -(Rational value) => new(-value._numerator, value.Denominator);

    /// <summary>The exact difference.</summary>
    public static Rational operator -(Rational left, Rational right) => left + -right;

    /// <summary>The exact product.</summary>
    public static Rational operator *(Rational left, Rational right) =>
        new(left._numerator * right._numerator, left.Denominator * right.Denominator);

    /// <summary>The exact quotient.</summary>
    /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
    public static Rational operator /(Rational left, Rational right) =>
        new(left._numerator * right.Denominator, left.Denominator * right._numerator);

    /// <summary>Whether the left number is less.</summary>
    public static bool operator <(Rational left, Rational right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left number is greater.</summary>
    public static bool operator >(Rational left, Rational right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left number is less or equal.</summary>
    public static bool operator <=(Rational left, Rational right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left number is greater or equal.</summary>
    public static bool operator >=(Rational left, Rational right) => left.CompareTo(right) >= 0;

    /// <inheritdoc/>
    public int CompareTo(Rational other) =>
        (_numerator * other.Denominator).CompareTo(other._numerator * Denominator);

    /// <summary>
    /// The number rounded half-even to 24 significant digits, without trailing zeros and never -0.
    /// A decimal holds 28 places after the point: below 1e-5 in magnitude the number is rounded half-even,
    /// once, to those, and keeps fewer digits; at half of 1e-28 and less it becomes 0.
    /// </summary>
    /// <exception cref="OverflowException">The rounded number is beyond the range of decimal, about 7.9e28.</exception>
    internal decimal ToDecimal()
    {
        if (_numerator.IsZero) return 0m;
        var places = Math.Min(Digits - 1 - Exponent(), MostPlaces);
        return places > 0
            ? Scaled(Quotient(_numerator * PowersOfTen.Get(places), Denominator), places)
            : (decimal)(Quotient(_numerator, Denominator * PowersOfTen.Get(-places)) * PowersOfTen.Get(-places));
    }

    private static decimal Scaled(BigInteger digits, int places) =>
        Decimals.Trim((decimal)digits * new decimal(1, 0, 0, false, (byte)places));

    /// <summary>The power of ten of the first significant digit.</summary>
    private int Exponent()
    {
        var magnitude = BigInteger.Abs(_numerator);
        // Lengths in bits leave the logarithm open by less than one digit: the exponent is `least` or one more.
        var least = PowersOfTen.Below(magnitude.GetBitLength() - Denominator.GetBitLength() - 1);
        var next = least + 1;
        var reached = next >= 0
            ? magnitude >= Denominator * PowersOfTen.Get(next)
            : magnitude * PowersOfTen.Get(-next) >= Denominator;
        return reached ? next : least;
    }

    /// <summary>The integer next to a fraction; of two equally near, the even one.</summary>
    private static BigInteger Quotient(BigInteger numerator, BigInteger denominator)
    {
        var (quotient, remainder) = BigInteger.DivRem(numerator, denominator);
        var half = (BigInteger.Abs(remainder) << 1).CompareTo(denominator);
        return half > 0 || (half == 0 && !quotient.IsEven) ? quotient + numerator.Sign : quotient;
    }
}
