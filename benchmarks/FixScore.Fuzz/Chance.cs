namespace FixScore.Fuzz;

/// <summary>Chance from a seed: SplitMix64 (Steele, Lea, Flood: Fast splittable pseudorandom number generators, OOPSLA 2014). The same seed gives the same inputs everywhere.</summary>
sealed class Chance(ulong seed)
{
    ulong state = seed;

    /// <summary>A number from 0 up to, not including, an end.</summary>
    public int Below(int end) => (int)(Next() % (ulong)end);

    public bool OneIn(int many) => Below(many) == 0;

    public T Of<T>(IReadOnlyList<T> choices) => choices[Below(choices.Count)];

    ulong Next()
    {
        unchecked
        {
            var z = state += 0x9E3779B97F4A7C15;
            z = (z ^ z >> 30) * 0xBF58476D1CE4E5B9;
            z = (z ^ z >> 27) * 0x94D049BB133111EB;
            return z ^ z >> 31;
        }
    }
}
