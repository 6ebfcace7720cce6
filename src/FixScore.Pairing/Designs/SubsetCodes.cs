namespace FixScore.Pairing.Designs;

/// <summary>Sets of one size as bits, in rising order of their value.</summary>
static class SubsetCodes
{
    /// <summary>The first sets of <paramref name="size"/> elements, 1 or more; so few that bit 62 is never reached.</summary>
    public static long[] First(int count, int size)
    {
        var codes = new long[count];
        for (var (i, code) = (0, (1L << size) - 1); i < count; i++, code = Next(code)) codes[i] = code;
        return codes;
    }

    // The next larger number with as many bits set: R. W. Gosper, item 175 of HAKMEM (1972; from memory).
    static long Next(long code)
    {
        var lowest = code & -code;
        var ripple = code + lowest;
        return ripple | ((code ^ ripple) >> 2) / lowest;
    }
}
