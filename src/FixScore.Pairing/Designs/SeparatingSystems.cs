using System.Collections.Immutable;

namespace FixScore.Pairing.Designs;

/// <summary>Fixed trials that tell which one of several parts is tied to the main board.</summary>
/// <remarks>
/// <see cref="OneAmong"/> and <see cref="OneOrNone"/> take it that no more than one is; <see cref="Completely"/> proves it.
/// Sources: Katona, On separating systems of a finite set, J. Combin. Theory 1 (1966) for the first two; Sperner, Ein Satz
/// über Untermengen einer endlichen Menge, Math. Z. 27 (1928) and Dickson, On a problem concerning separating systems of a
/// finite set, J. Combin. Theory 7 (1969) for the third (all from memory).
/// </remarks>
public static class SeparatingSystems
{
    /// <summary>⌈log₂ n⌉ trials for exactly one tied part among n, the fewest possible: the flagged trials spell its place, from 0, in binary.</summary>
    /// <exception cref="ArgumentException">A part is named twice.</exception>
    public static SwapDesign OneAmong(IEnumerable<string> parts) => Binary(SwapDesign.Checked(parts), first: 0);

    /// <summary>⌈log₂(n + 1)⌉ trials for one tied part among n or none, the fewest possible: the flagged trials spell its place, from 1; no flag, no part.</summary>
    /// <exception cref="ArgumentException">A part is named twice.</exception>
    public static SwapDesign OneOrNone(IEnumerable<string> parts) => Binary(SwapDesign.Checked(parts), first: 1);

    /// <summary>
    /// Trials such that of any two parts each is swapped once without the other: the smallest T with C(T, ⌊T/2⌋) ≥ n, the
    /// fewest possible. If one part alone is tied, clean trials clear all others, and that is proof without assuming it.
    /// </summary>
    /// <remarks>Every part is in ⌊T/2⌋ of the trials; a single part needs one trial.</remarks>
    /// <exception cref="ArgumentException">A part is named twice.</exception>
    public static SwapDesign Completely(IEnumerable<string> parts)
    {
        var ids = SwapDesign.Checked(parts);
        var trials = ids.Length == 1 ? 1 : CompleteTrials(ids.Length);
        return SwapDesign.OfCodes(ids, trials, SubsetCodes.First(ids.Length, Math.Max(trials / 2, 1)));
    }

    static int CompleteTrials(int parts)
    {
        var trials = 0;
        while (InformationBounds.Choose(trials, trials / 2) < parts) trials++;
        return trials;
    }

    static SwapDesign Binary(ImmutableArray<string> parts, int first)
    {
        var codes = Enumerable.Range(first, parts.Length).Select(code => (long)code).ToArray();
        return SwapDesign.OfCodes(parts, InformationBounds.CeilingLog2(Math.Max(parts.Length + first, 1)), codes);
    }
}
