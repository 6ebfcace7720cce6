using System.Numerics;

namespace FixScore.Numbers;

/// <summary>A decimal taken apart: an integer times a power of ten.</summary>
internal static class Decimals
{
    // The largest scale a decimal can have. A division drops the trailing zeros of its quotient.
    private const decimal OneWithAllPlaces = 1.0000000000000000000000000000m;

    /// <summary>The signed integer m in <c>value = m / 10^value.Scale</c>.</summary>
    internal static BigInteger Mantissa(decimal value)
    {
        Span<int> bits = stackalloc int[4];
        decimal.GetBits(value, bits);
        var magnitude = new UInt128(Word(bits[2]), (Word(bits[1]) << 32) | Word(bits[0]));
        return decimal.IsNegative(value) ? -(BigInteger)magnitude : magnitude;
    }

    /// <summary>The same number without trailing zeros after the point, and zero without a sign.</summary>
    internal static decimal Trim(decimal value) => value == 0 ? 0m : value.Scale == 0 ? value : value / OneWithAllPlaces;

    private static ulong Word(int bits) => unchecked((uint)bits);
}
