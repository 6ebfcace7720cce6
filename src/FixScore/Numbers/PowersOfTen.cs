using System.Numerics;

namespace FixScore.Numbers;

/// <summary>Powers of ten as integers; the small ones, which nearly every call asks for, are computed once.</summary>
internal static class PowersOfTen
{
    // log10(2) times 2^32, rounded down.
    private const long LogOfTwo = 1_292_913_986;

    private static readonly BigInteger[] Small = [.. Enumerable.Range(0, 64).Select(n => BigInteger.Pow(10, n))];

    /// <summary>10 to a power that is zero or more.</summary>
    internal static BigInteger Get(int exponent) =>
        exponent < Small.Length ? Small[exponent] : BigInteger.Pow(10, exponent);

    /// <summary>The exponent of the greatest power of ten that is no more than 2^<paramref name="log2"/>.</summary>
    internal static int Below(long log2) => (int)((log2 * LogOfTwo) >> 32);
}
