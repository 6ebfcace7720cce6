namespace FixScore.Analysis.Chance;

/// <summary>Random numbers by number: the same key and index give the same bits whatever was asked before, so work can be split in any way.</summary>
/// <remarks>
/// SplitMix64 (Steele, Lea and Flood, Fast splittable pseudorandom number generators, OOPSLA 2014): its state is key +
/// index x golden gamma, its output the state mixed by two multiplications and three shifts. Only whole numbers, so the same
/// on every machine. Not for secrets. Immutable and thread safe.
/// </remarks>
public readonly record struct RandomCounter
{
    const ulong Gamma = 0x9E3779B97F4A7C15;
    const double Step = 1.0 / (1L << 53);

    readonly ulong _key;

    internal RandomCounter(ulong key) => _key = key;

    /// <summary>Numbers of one purpose under one seed.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="stream">Tells purposes apart that must not share numbers, such as weights and values.</param>
    public static RandomCounter Of(long seed, int stream) => unchecked(new(Mix(Mix((ulong)seed + Gamma) + (ulong)stream)));

    /// <summary>64 random bits.</summary>
    /// <param name="index">Which; the first is 0.</param>
    public ulong Bits(long index) => unchecked(Mix(_key + (((ulong)index + 1) * Gamma)));

    /// <summary>A number in [0, 1), a multiple of 2^-53, all equally likely.</summary>
    /// <inheritdoc cref="Bits"/>
    public double Unit(long index) => (Bits(index) >> 11) * Step;

    /// <summary>A source of numbers of its own, for draws that need no fixed count of them.</summary>
    /// <inheritdoc cref="Bits"/>
    public RandomCounter Part(long index) => new(Bits(index));

    static ulong Mix(ulong bits)
    {
        unchecked
        {
            bits = (bits ^ (bits >> 30)) * 0xBF58476D1CE4E5B9;
            bits = (bits ^ (bits >> 27)) * 0x94D049BB133111EB;
            return bits ^ (bits >> 31);
        }
    }
}
