namespace FixScore.Analysis.Chance;

/// <summary>Logarithm and exponential out of + - x / alone, which IEEE 754 fixes to the bit; those of a platform's library may differ in the last.</summary>
/// <remarks>Textbook range reduction by powers of 2, then the series of 2 artanh and of exp. Error within a few units in the last place. Stateless.</remarks>
static class Elementary
{
    const double Ln2 = 0.693147180559945309417;
    const double RootHalf = 0.70710678118654752440;
    const int ExponentBits = 52;
    const int Bias = 1023;

    /// <summary>Natural logarithm of a normal number above 0.</summary>
    public static double Log(double value)
    {
        var bits = BitConverter.DoubleToInt64Bits(value);
        var exponent = (int)(bits >> ExponentBits) - Bias + 1;
        var fraction = BitConverter.Int64BitsToDouble((bits & ((1L << ExponentBits) - 1)) | ((Bias - 1L) << ExponentBits));
        if (fraction < RootHalf) (fraction, exponent) = (fraction * 2, exponent - 1);
        return (exponent * Ln2) + TwiceArtanh((fraction - 1) / (fraction + 1));
    }

    /// <summary>e to a power; 0 where that is below the normal numbers. The power is at most 700.</summary>
    public static double Exp(double power)
    {
        if (power < -708) return 0;
        var twos = (long)((power / Ln2) + (power < 0 ? -0.5 : 0.5));
        var rest = power - (twos * Ln2);
        var sum = 1.0;
        for (var n = 16; n > 0; n--) sum = 1 + (sum * rest / n);
        return sum * BitConverter.Int64BitsToDouble((twos + Bias) << ExponentBits);
    }

    // At most 0.1716 in magnitude: the last term is below 2e-18 of the first.
    static double TwiceArtanh(double ratio)
    {
        var square = ratio * ratio;
        var sum = 0.0;
        for (var n = 23; n > 0; n -= 2) sum = (sum * square) + (1.0 / n);
        return 2 * ratio * sum;
    }
}
