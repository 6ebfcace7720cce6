using System.Numerics;

namespace FixScore.Pairing.Designs;

/// <summary>How many trials are needed at least, whatever the strategy, when each trial tells only "worse" or "as before".</summary>
/// <remarks>
/// T trials have 2^T outcomes, so telling N cases apart takes ⌈log₂ N⌉ of them in the worst case. A bound, not a promise:
/// for several culprits it is often not reached. Exact for any size. Source: Du and Hwang, Combinatorial Group Testing and
/// Its Applications (the information lower bound; from memory).
/// </remarks>
public static class InformationBounds
{
    /// <summary>Trials needed when exactly <paramref name="culprits"/> of <paramref name="parts"/> parts are tied.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative, or there are more culprits than parts.</exception>
    public static int Exactly(int parts, int culprits) => CeilingLog2(Choose(parts, culprits));

    /// <summary>Trials needed when at most <paramref name="culprits"/> of <paramref name="parts"/> parts are tied, perhaps none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative, or there are more culprits than parts.</exception>
    public static int AtMost(int parts, int culprits)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(culprits);
        var cases = BigInteger.Zero;
        for (var tied = 0; tied <= culprits; tied++) cases += Choose(parts, tied);
        return CeilingLog2(cases);
    }

    /// <summary>Trials needed when at most one tie is real, of those of each part to the main board and of each two parts to each other.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public static int OneTie(int parts)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(parts);
        return CeilingLog2(1 + parts + new BigInteger(parts) * (parts - 1) / 2);
    }

    /// <summary>The number of ways to choose <paramref name="chosen"/> of <paramref name="from"/> things.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative, or more is chosen than there is.</exception>
    public static BigInteger Choose(int from, int chosen)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(from);
        ArgumentOutOfRangeException.ThrowIfNegative(chosen);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(chosen, from);
        var ways = BigInteger.One;
        for (var i = 1; i <= chosen; i++) ways = ways * (from - chosen + i) / i;
        return ways;
    }

    /// <summary>⌈log₂ n⌉ for n of 1 or more.</summary>
    internal static int CeilingLog2(BigInteger n) => (int)(n - 1).GetBitLength();
}
