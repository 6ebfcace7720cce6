namespace FixScore.Pairing.Posterior;

/// <summary>Pseudo-random numbers that are the same everywhere. G. L. Steele, D. Lea and C. H. Flood, Fast Splittable Pseudorandom Number Generators, OOPSLA 2014.</summary>
sealed class SplitMix(ulong seed)
{
    ulong state = seed;

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

    /// <summary>From 0 to below 1, in steps of 2 to the power of -53.</summary>
    public double Unit() => (Next() >> 11) * (1.0 / 9007199254740992);
}
