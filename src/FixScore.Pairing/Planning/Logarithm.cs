namespace FixScore.Pairing.Planning;

/// <summary>Logarithms in exact decimals, the same digits on every machine.</summary>
/// <remarks>ln x = 2 artanh((x - 1) / (x + 1)) as a power series (Abramowitz and Stegun 4.1.27, from memory), after halving or doubling x to near 1.</remarks>
static class Logarithm
{
    const decimal Ln2 = 0.6931471805599453094172321215m;
    const decimal Root2 = 1.4142135623730950488016887242m;

    /// <summary>The logarithm to base 2 of a number above 0; good to 24 digits after the point.</summary>
    public static decimal Base2(decimal number)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(number);
        var doublings = 0;
        for (; number > Root2; doublings++) number /= 2;
        for (; number * Root2 < 1; doublings--) number *= 2;
        return doublings + Ln(number) / Ln2;
    }

    static decimal Ln(decimal number)
    {
        var power = (number - 1) / (number + 1);
        var (square, sum) = (power * power, 0m);
        for (var odd = 1; power != 0; odd += 2, power *= square) sum += power / odd;
        return 2 * sum;
    }
}
