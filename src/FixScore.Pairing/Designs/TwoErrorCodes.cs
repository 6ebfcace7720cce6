namespace FixScore.Pairing.Designs;

/// <summary>Binary words all of whose sums of at most two differ: columns of check matrices of codes of distance 5.</summary>
static class TwoErrorCodes
{
    // Irreducible polynomials over GF(2) of degree 1 to 10, found in any table of finite fields.
    static readonly int[] Polynomials = [0b11, 0b111, 0b1011, 0b10011, 0b100101, 0b1000011, 0b10000011, 0b100011011, 0b1000010001, 0b10000001001];

    // Beyond this length the greedy search would cost more time than the trials it may save are worth.
    const int LongestGreedy = 13;

    /// <summary>The number of trials and a word for each part: greedy words where they are shorter than those of the BCH code.</summary>
    public static (int Trials, long[] Words) For(int parts)
    {
        var bound = TieDesigns.SeparatingBound(parts);
        for (var trials = InformationBounds.OneTie(parts); trials < Math.Min(bound, LongestGreedy + 1); trials++)
            if (Greedy(parts, trials) is { } words) return (trials, words);
        return (bound, Bch(parts, bound / 2));
    }

    // Each word is the least that is no sum of at most three words before it (Varshamov 1957).
    static long[]? Greedy(int parts, int trials)
    {
        var words = new List<int>();
        var taken = new bool[1 << trials];
        var sums = new List<int> { 0 };
        taken[0] = true;
        for (var word = 1; words.Count < parts && word < taken.Length; word++)
        {
            if (taken[word]) continue;
            foreach (var sum in sums) taken[sum ^ word] = true;
            sums.AddRange(words.Append(0).Select(other => other ^ word).ToArray());
            words.Add(word);
        }
        return words.Count == parts ? [.. words.Select(word => (long)word)] : null;
    }

    // Word i is i and its cube in the field of 2^degree elements, side by side.
    static long[] Bch(int parts, int degree) =>
        [.. Enumerable.Range(1, parts).Select(i => i + ((long)Product(i, Product(i, i, degree), degree) << degree))];

    static int Product(int a, int b, int degree)
    {
        var product = 0;
        for (; b != 0; b >>= 1)
        {
            if ((b & 1) != 0) product ^= a;
            a <<= 1;
            if ((a >> degree & 1) != 0) a ^= Polynomials[degree - 1];
        }
        return product;
    }
}
