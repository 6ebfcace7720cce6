using System.Globalization;
using System.Numerics;
using FixScore.Numbers;

namespace FixScore.Analysis.Weights;

/// <summary>An exact rational number in lowest terms. <c>default</c> is zero. Immutable and thread safe.</summary>
/// <remarks>Every decimal is one exactly. No operation rounds but the conversion to double.</remarks>
public readonly struct Fraction : IEquatable<Fraction>, IComparable<Fraction>
{
    readonly BigInteger _denominatorLessOne;

    /// <summary>A quotient of two whole numbers.</summary>
    /// <exception cref="DivideByZeroException">The denominator is zero.</exception>
    public Fraction(BigInteger numerator, BigInteger denominator)
    {
        if (denominator.IsZero) throw new DivideByZeroException();
        var divisor = BigInteger.GreatestCommonDivisor(numerator, denominator) * denominator.Sign;
        Numerator = numerator / divisor;
        _denominatorLessOne = (denominator / divisor) - 1;
    }

    /// <summary>One.</summary>
    public static Fraction One => new(1, 1);

    /// <summary>Above the line; carries the sign.</summary>
    public BigInteger Numerator { get; }

    /// <summary>Below the line; 1 or more.</summary>
    public BigInteger Denominator => _denominatorLessOne + 1;

    /// <summary>-1, 0 or 1.</summary>
    public int Sign => Numerator.Sign;

    /// <summary>A decimal is a whole number over a power of ten.</summary>
    public static implicit operator Fraction(decimal value) => new(Decimals.Mantissa(value), PowersOfTen.Get(value.Scale));

    /// <summary>A whole number.</summary>
    public static implicit operator Fraction(int value) => new(value, 1);

    /// <summary>The nearest double, or next to it.</summary>
    public static explicit operator double(Fraction value) => value.ToDouble();

    /// <summary>The exact sum.</summary>
    public static Fraction operator +(Fraction left, Fraction right) =>
        new((left.Numerator * right.Denominator) + (right.Numerator * left.Denominator), left.Denominator * right.Denominator);

    /// <summary>The exact difference.</summary>
    public static Fraction operator -(Fraction left, Fraction right) => left + -right;

    /// <summary>The same magnitude with the other sign.</summary>
    public static Fraction operator -(Fraction value) => new(-value.Numerator, value.Denominator);

    /// <summary>The exact product.</summary>
    public static Fraction operator *(Fraction left, Fraction right) => new(left.Numerator * right.Numerator, left.Denominator * right.Denominator);

    /// <summary>The exact quotient.</summary>
    /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
    public static Fraction operator /(Fraction left, Fraction right) => new(left.Numerator * right.Denominator, left.Denominator * right.Numerator);

    /// <summary>Whether both are the same number.</summary>
    public static bool operator ==(Fraction left, Fraction right) => left.Equals(right);

    /// <summary>Whether they differ.</summary>
    public static bool operator !=(Fraction left, Fraction right) => !left.Equals(right);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(Fraction left, Fraction right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left is greater.</summary>
    public static bool operator >(Fraction left, Fraction right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left is less or equal.</summary>
    public static bool operator <=(Fraction left, Fraction right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left is greater or equal.</summary>
    public static bool operator >=(Fraction left, Fraction right) => left.CompareTo(right) >= 0;

    /// <summary>The number without its sign.</summary>
    public static Fraction Abs(Fraction value) => value.Sign < 0 ? -value : value;

    /// <inheritdoc/>
    public int CompareTo(Fraction other) => (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);

    /// <inheritdoc/>
    public bool Equals(Fraction other) => Numerator == other.Numerator && _denominatorLessOne == other._denominatorLessOne;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Fraction other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Numerator, _denominatorLessOne);

    /// <summary>The nearest double, or next to it: never off by more than one unit in the last place for magnitudes between 1e-290 and 1e290.</summary>
    public double ToDouble()
    {
        var shift = (int)(Denominator.GetBitLength() - BigInteger.Abs(Numerator).GetBitLength()) + 64;
        var quotient = shift >= 0 ? (Numerator << shift) / Denominator : Numerator / (Denominator << -shift);
        return Math.ScaleB((double)quotient, -shift);
    }

    /// <summary>As in 3/7; a whole number without a line.</summary>
    public override string ToString() => Denominator.IsOne
        ? Numerator.ToString(CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{Numerator}/{Denominator}");
}
