namespace FixScore.Testing;

/// <summary>
/// SplitMix64: a counter that grows by an odd constant, each value mixed by two multiplications and three shifts.
/// The same numbers on every machine and in every version, which <see cref="Random"/> does not promise.
/// </summary>
/// <remarks>
/// Source: Steele, Lea and Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014, with the mixing
/// constants of Stafford's variant 13. Not for secrets.
/// </remarks>
sealed class SplitMix(ulong seed)
{
    ulong state = seed;

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        unchecked
        {
            var mixed = state += 0x9E3779B97F4A7C15;
            mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
            return mixed ^ (mixed >> 31);
        }
    }
}
