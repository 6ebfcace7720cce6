using System.Collections.Immutable;
using System.Numerics;

namespace FixScore.Pairing.Designs;

/// <summary>Hwang's generalised binary splitting: trial by trial, for at most so many tied parts.</summary>
/// <remarks>
/// A strategy as a value: <see cref="Next"/> says what to swap together, <see cref="After"/> gives the strategy once the
/// outcome is known. With u parts open and at most d of them tied: if u ≤ 2d − 2, swap them one by one; else swap
/// 2^⌊log₂((u − d + 1)/d)⌋ together; where a group is flagged, halve it until one tied part is found, and put back what
/// was not cleared on the way. Source: Hwang, A method for detecting all defective members in a population by group
/// testing, J. Amer. Statist. Assoc. 67 (1972), 605–608 (from memory). Immutable and thread safe.
/// </remarks>
public sealed record BinarySplitting
{
    BinarySplitting(ImmutableArray<string> open, int atMost) => (Open, AtMost) = (open, atMost);

    /// <summary>Parts of which nothing is known yet, in the order given.</summary>
    public ImmutableArray<string> Open { get; private init; }

    /// <summary>Parts of which one at least is tied; empty when no group is being halved.</summary>
    public ImmutableArray<string> Flagged { get; private init; } = [];

    /// <summary>How many of the open and flagged parts are tied at most.</summary>
    public int AtMost { get; private init; }

    /// <summary>Parts found to be tied, in the order found.</summary>
    public ImmutableArray<string> Tied { get; private init; } = [];

    /// <summary>Whether all is known: what is not in <see cref="Tied"/> is not tied.</summary>
    public bool IsDone => Next.IsEmpty;

    /// <summary>The parts to swap together next; empty when done.</summary>
    public ImmutableArray<string> Next => Flagged.IsEmpty ? Open[..GroupSize(Open.Length, AtMost)] : Flagged[..(Flagged.Length / 2)];

    /// <summary>The strategy before the first trial.</summary>
    /// <exception cref="ArgumentException">A part is named twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="atMost"/> is negative or more than there are parts.</exception>
    public static BinarySplitting Of(IEnumerable<string> parts, int atMost)
    {
        var ids = SwapDesign.Checked(parts);
        ArgumentOutOfRangeException.ThrowIfNegative(atMost);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(atMost, ids.Length);
        return new(ids, atMost);
    }

    /// <summary>The strategy after <see cref="Next"/> was swapped and was flagged, or was not.</summary>
    /// <exception cref="InvalidOperationException">All is known already.</exception>
    public BinarySplitting After(bool flagged)
    {
        if (IsDone) throw new InvalidOperationException("All is known already.");
        var tried = Next;
        var untried = Flagged.RemoveRange(tried);
        var rest = Flagged.IsEmpty ? Open[tried.Length..] : Open;
        return flagged
            ? (this with { Open = [.. untried, .. rest], Flagged = tried }).FindLast()
            : (this with { Open = rest, Flagged = untried }).FindLast();
    }

    /// <summary>
    /// Trials in the worst case: n one by one if n ≤ 2d − 2; else, with l = n − d + 1, α = ⌊log₂(l/d)⌋ and
    /// p = ⌊(l − 2^α d)/2^α⌋, it is (α + 2)d + p − 1. None when nothing can be tied.
    /// </summary>
    /// <remarks>Source: Hwang 1972; Du and Hwang, Combinatorial Group Testing and Its Applications (from memory).</remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="atMost"/> is negative or more than <paramref name="parts"/>.</exception>
    public static int WorstCase(int parts, int atMost)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(atMost);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(atMost, parts);
        if (atMost == 0) return 0;
        if (parts <= 2 * atMost - 2) return parts;
        var spare = parts - atMost + 1;
        var exponent = BitOperations.Log2((uint)(spare / atMost));
        return (exponent + 2) * atMost + (spare - (atMost << exponent) >> exponent) - 1;
    }

    static int GroupSize(int open, int atMost)
    {
        if (atMost == 0 || open == 0) return 0;
        return open <= 2 * atMost - 2 ? 1 : 1 << BitOperations.Log2((uint)((open - atMost + 1) / atMost));
    }

    BinarySplitting FindLast() => Flagged.Length == 1
        ? this with { Flagged = [], Tied = [.. Tied, Flagged[0]], AtMost = AtMost - 1 }
        : this;
}
