using System.Numerics;
using FixScore.Numbers;

namespace FixScore.Canonical;

/// <summary>
/// The fewest decimal digits that read back as the same double; of several such, those nearest to it; of two
/// equally near, the even ones (ECMA-262, Number::toString, note 2, which RFC 8785 makes binding).
/// </summary>
/// <remarks>
/// R. G. Burger and R. K. Dybvig, Printing floating-point numbers quickly and accurately, PLDI 1996 (from memory),
/// in exact integers. Not the shortest form of the runtime: for 2^-25 that of .NET 10 reads back as another double.
/// </remarks>
internal ref struct ShortestDigits
{
    /// <summary>No double needs more.</summary>
    internal const int MostDigits = 17;

    private const int MantissaBits = 52;
    private const int LeastExponent = -1074;

    // The double is _rest / _unit; half the way to the next one is _above / _unit, to the previous one _below / _unit.
    private BigInteger _rest;
    private BigInteger _unit;
    private BigInteger _above;
    private BigInteger _below;

    // A decimal halfway between two doubles reads as the even one.
    private readonly bool _isEven;

    private ShortestDigits(ulong mantissa, int exponent)
    {
        // Below a power of two the doubles lie twice as close as above it.
        var isPower = mantissa == 1UL << MantissaBits && exponent > LeastExponent;
        var finest = exponent - (isPower ? 2 : 1);
        _isEven = (mantissa & 1) == 0;
        _below = BigInteger.One << Math.Max(finest, 0);
        _above = isPower ? _below << 1 : _below;
        _rest = mantissa * (_above << 1);
        _unit = BigInteger.One << Math.Max(-finest, 0);
    }

    /// <summary>Writes the digits of a finite double above zero, as ASCII.</summary>
    /// <param name="value">The double.</param>
    /// <param name="digits">Room for <see cref="MostDigits"/>.</param>
    /// <param name="point">Where the decimal point stands: the value is 0.digits times ten to this power.</param>
    /// <returns>How many digits there are; neither the first nor the last is 0.</returns>
    internal static int Of(double value, Span<byte> digits, out int point)
    {
        var bits = BitConverter.DoubleToUInt64Bits(value);
        var (mantissa, exponent) = (bits & ((1UL << MantissaBits) - 1), (int)(bits >> MantissaBits));
        if (exponent > 0) mantissa |= 1UL << MantissaBits;
        exponent = Math.Max(exponent, 1) + LeastExponent - 1;

        var search = new ShortestDigits(mantissa, exponent);
        point = search.PlacePoint(exponent + (int)ulong.Log2(mantissa));
        return search.Generate(digits);
    }

    /// <summary>Scales so that the first digit comes next, and says how far.</summary>
    private int PlacePoint(int log2)
    {
        // A lower bound: the point belongs here or a little further.
        var point = PowersOfTen.Below(log2);
        if (point >= 0) _unit *= PowersOfTen.Get(point);
        else Multiply(PowersOfTen.Get(-point));
        while (ReachesNext())
        {
            _unit *= 10;
            point++;
        }

        return point;
    }

    private int Generate(Span<byte> digits)
    {
        for (var count = 0; ; count++)
        {
            Multiply(10);
            var digit = (int)BigInteger.DivRem(_rest, _unit, out _rest);
            var (down, up) = (_isEven ? _rest <= _below : _rest < _below, ReachesNext());
            if (down && up) up = IsNearerUp(digit);
            digits[count] = (byte)('0' + (up ? digit + 1 : digit));
            if (down || up) return count + 1;
        }
    }

    private readonly bool ReachesNext() => _isEven ? _rest + _above >= _unit : _rest + _above > _unit;

    private readonly bool IsNearerUp(int digit)
    {
        var half = (_rest << 1).CompareTo(_unit);
        return half > 0 || (half == 0 && int.IsOddInteger(digit));
    }

    private void Multiply(BigInteger factor)
    {
        _rest *= factor;
        _above *= factor;
        _below *= factor;
    }
}
