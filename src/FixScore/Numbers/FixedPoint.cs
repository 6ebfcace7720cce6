using System.Numerics;

namespace FixScore.Numbers;

/// <summary>
/// Natural logarithm and exponential in binary fixed point: an integer n stands for n / 2^bits.
/// Integers only, so every machine gives the same bits. Immutable, safe to share between threads.
/// </summary>
/// <remarks>
/// Argument reduction after H. Briggs, Arithmetica Logarithmica (1624): factors 1 + 2^-k, which cost a shift and an
/// addition. Since 1 + 2x &lt;= (1 + x)^2, each factor is needed at most once. What is left is below 2^-8.
///
/// Error in units of 2^-bits, for any decimal (exponents of two within 97) and bits >= 128:
/// a table entry less than 1; Ln 97 + 8 for the table, 10 for the shifts, bits/4 + 4 for the series: below 1.2 bits;
/// Exp in its mantissa, which is at most 2: 2 (97 + 8 + bits/4) and twice the error of its argument.
/// Together below 5 bits; <see cref="Error"/> promises no more than 16 bits.
/// </remarks>
internal sealed class FixedPoint
{
    /// <summary>Enough for 24 digits, but for one value in thousands of millions.</summary>
    internal static readonly FixedPoint Ordinary = new(128);

    private const int Steps = 8;
    private const int GuardBits = 32;

    private readonly BigInteger _one;
    private readonly BigInteger _two;
    private readonly BigInteger[] _logarithms;

    private FixedPoint(int bits)
    {
        Bits = bits;
        _one = BigInteger.One << bits;
        _two = _one << 1;
        _logarithms = [.. Enumerable.Range(0, Steps + 1).Select(k => LogarithmOfFactor(k, bits))];
    }

    /// <summary>Binary places after the point.</summary>
    internal int Bits { get; }

    /// <summary>Bound on the error of a mantissa that went through a mean of <see cref="Ln"/> and <see cref="Exp"/>.</summary>
    internal BigInteger Error => 16 * Bits;

    /// <summary>The same arithmetic with twice as many places.</summary>
    internal FixedPoint Doubled() => new(2 * Bits);

    /// <summary>ln(value), for a value above zero.</summary>
    internal BigInteger Ln(decimal value)
    {
        var (x, exponent) = Normalize(value);
        var sum = (exponent + 1) * _logarithms[0];
        for (var k = 1; k <= Steps; k++)
        {
            var next = x + (x >> k);
            if (next > _two) continue;
            x = next;
            sum -= _logarithms[k];
        }

        return sum - LogarithmOfQuotient(_two, x);
    }

    /// <summary>e^y as mantissa * 2^(exponent - Bits), the mantissa from 1 to 2.</summary>
    internal (BigInteger Mantissa, int Exponent) Exp(BigInteger y)
    {
        var (exponent, rest) = BigInteger.DivRem(y, _logarithms[0]);
        if (rest.Sign < 0) (exponent, rest) = (exponent - 1, rest + _logarithms[0]);
        var factor = _one;
        for (var k = 1; k <= Steps; k++)
        {
            if (rest < _logarithms[k]) continue;
            rest -= _logarithms[k];
            factor += factor >> k;
        }

        return (factor * ExponentialSeries(rest) >> Bits, (int)exponent);
    }

    /// <summary>value = x * 2^exponent, x from 1 to below 2.</summary>
    private (BigInteger X, int Exponent) Normalize(decimal value)
    {
        var (mantissa, power) = (Decimals.Mantissa(value), PowersOfTen.Get(value.Scale));
        var exponent = (int)(mantissa.GetBitLength() - power.GetBitLength());
        var x = (mantissa << (Bits - exponent)) / power;
        return x < _one ? (x << 1, exponent - 1) : (x, exponent);
    }

    /// <summary>ln(a/b) = 2 artanh((a - b) / (a + b)), for a and b close together.</summary>
    private BigInteger LogarithmOfQuotient(BigInteger a, BigInteger b)
    {
        var power = ((a - b) << Bits) / (a + b);
        var square = power * power >> Bits;
        var sum = BigInteger.Zero;
        for (var odd = 1; !power.IsZero; odd += 2)
        {
            sum += power / odd;
            power = power * square >> Bits;
        }

        return sum << 1;
    }

    private BigInteger ExponentialSeries(BigInteger x)
    {
        var (sum, term) = (_one, x);
        for (var n = 2; !term.IsZero; n++)
        {
            sum += term;
            term = (term * x >> Bits) / n;
        }

        return sum;
    }

    /// <summary>ln(1 + 2^-k) = 2 artanh(1 / (2^(k+1) + 1)).</summary>
    private static BigInteger LogarithmOfFactor(int k, int bits)
    {
        var divisor = (1 << (k + 1)) + 1;
        var power = (BigInteger.One << (bits + GuardBits + 1)) / divisor;
        var sum = BigInteger.Zero;
        for (var odd = 1; !power.IsZero; odd += 2)
        {
            sum += power / odd;
            power /= divisor * divisor;
        }

        return sum >> GuardBits;
    }
}
