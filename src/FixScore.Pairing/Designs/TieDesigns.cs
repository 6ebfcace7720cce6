using System.Collections.Immutable;
using FixScore.Pairing.Ties;

namespace FixScore.Pairing.Designs;

/// <summary>Fixed trials that tell apart ties of parts to the main board and ties between two parts.</summary>
/// <remarks>
/// Write for each part the word of trials that swap it. A tie to the main board is broken in just these; a tie between two
/// parts is broken where their words differ, in the sum of the two words modulo 2. So the outcomes of all single ties, and of
/// none, differ just when all sums of at most two words differ: the words are the columns of the check matrix of a binary
/// code that corrects two errors. Sources: Bose and Ray-Chaudhuri, On a class of error correcting binary group codes,
/// Inform. and Control 3 (1960); Hocquenghem, Codes correcteurs d'erreurs, Chiffres 2 (1959); Varshamov, Dokl. Akad. Nauk
/// SSSR 117 (1957) for taking words greedily (all from memory). That ties are such sums is our own remark.
/// </remarks>
public static class TieDesigns
{
    /// <summary>The most parts that <see cref="Separating"/> serves.</summary>
    public const int MostParts = 1023;

    /// <summary>
    /// Trials in which every single tie, and none at all, gives an outcome of its own. Never more than
    /// <see cref="SeparatingBound"/>, never fewer than <see cref="InformationBounds.OneTie"/>; not always the fewest possible.
    /// Takes it that at most one tie is real.
    /// </summary>
    /// <exception cref="ArgumentException">A part is named twice, or there are more than <see cref="MostParts"/>.</exception>
    public static SwapDesign Separating(IEnumerable<string> parts)
    {
        var ids = SwapDesign.Checked(parts);
        if (ids.Length > MostParts) throw new ArgumentException("Too many parts.", nameof(parts));
        var (trials, words) = TwoErrorCodes.For(ids.Length);
        return SwapDesign.OfCodes(ids, trials, words);
    }

    /// <summary>Trials that <see cref="Separating"/> never exceeds: 2⌈log₂(n + 1)⌉ for n parts, those of a two-error-correcting BCH code.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public static int SeparatingBound(int parts)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(parts);
        return 2 * InformationBounds.CeilingLog2(parts + 1);
    }

    /// <summary>
    /// n + 1 trials that prove any single tie without assuming that it is the only one: each part alone, then all parts
    /// together, which breaks the ties to the main board and no other (putting in the main board alone does the same).
    /// </summary>
    /// <remarks>Of any two ties each is broken in a trial that leaves the other whole, so clean trials exclude all but a single real one.</remarks>
    /// <exception cref="ArgumentException">A part is named twice.</exception>
    public static SwapDesign Proving(IEnumerable<string> parts)
    {
        var ids = SwapDesign.Checked(parts);
        ImmutableArray<ImmutableArray<string>> alone = [.. ids.Select(part => ImmutableArray.Create(part))];
        return new(ids, ids.Length < 2 ? alone : alone.Add(ids));
    }

    /// <summary>
    /// Sets of two or more ties that a design does not tell apart when at most one is real: they are broken in the same
    /// trials. Ordered by first tie, ties to the main board before those between parts. Ties that no trial breaks are a set
    /// too, even of one: they look like no tie at all.
    /// </summary>
    public static ImmutableArray<ImmutableArray<Tie>> NotToldApart(SwapDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        var sets = TiesOf(design.Parts).GroupBy(tie => string.Join(' ', BrokenIn(design, tie)), StringComparer.Ordinal);
        return [.. sets.Where(set => set.Key.Length == 0 || set.Skip(1).Any()).Select(set => set.ToImmutableArray())];
    }

    /// <summary>Numbers, from 0, of the trials of a design that break a tie, rising.</summary>
    public static ImmutableArray<int> BrokenIn(SwapDesign design, Tie tie)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(tie);
        return
        [
            .. Enumerable.Range(0, design.Trials.Length)
                .Where(trial => design.Trials[trial].Contains(tie.Part) != (tie.With is { } other && design.Trials[trial].Contains(other))),
        ];
    }

    static IEnumerable<Tie> TiesOf(ImmutableArray<string> parts) => parts.Select(part => new Tie(part))
        .Concat(parts.SelectMany((first, i) => parts.Skip(i + 1).Select(second => new Tie(first, second))));
}
