namespace FixScore.Pairing.Designs;

/// <summary>Fixed trials in which any two parts are seen in all four ways: both swapped, either one alone, neither.</summary>
/// <remarks>
/// Binary covering arrays of strength 2. With them a tie between two parts, a tie of either to the main board and no tie all
/// look different as long as only these two parts are under suspicion: together from one unit the tie between them stays
/// whole, apart it breaks. N trials serve up to C(N − 1, ⌊N/2⌋ − 1) parts, which no array betters. The first trial swaps
/// nothing and is the control; each part is in ⌈N/2⌉ of the others, so that no part's trials lie within another's and any
/// two meet. Sources: Kleitman and Spencer, Families of k-independent sets, Discrete Math. 6 (1973); Katona, Two
/// applications (for search theory and truth functions) of Sperner type theorems, Period. Math. Hungar. 3 (1973) (both
/// from memory).
/// </remarks>
public static class CoveringArrays
{
    /// <summary>The fewest trials for so many parts, the control included; 0 for none and 2 for one part (with and without it).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public static int PairwiseTrials(int parts)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(parts);
        if (parts < 2) return 2 * parts;
        var trials = 4;
        while (InformationBounds.Choose(trials - 1, trials / 2 - 1) < parts) trials++;
        return trials;
    }

    /// <summary>The optimal design, <see cref="PairwiseTrials"/> trials.</summary>
    /// <exception cref="ArgumentException">A part is named twice.</exception>
    public static SwapDesign Pairwise(IEnumerable<string> parts)
    {
        var ids = SwapDesign.Checked(parts);
        var trials = PairwiseTrials(ids.Length);
        var codes = SubsetCodes.First(ids.Length, Math.Max((trials + 1) / 2, 1));
        return SwapDesign.OfCodes(ids, trials, [.. codes.Select(code => code << 1)]);
    }
}
