using System.Collections.Immutable;

namespace FixScore.Pairing;

/// <summary>A part, or a group replaced together, whose tie to the main board is not settled yet.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Tied">The weight of its being tied; above 0.</param>
/// <param name="Free">The weight of its being free; above 0.</param>
public sealed record TieCandidate(string Id, decimal Tied, decimal Free);

/// <summary>What is believed of several candidates at once: which sets of tied parts are possible, and how probable each is.</summary>
/// <remarks>
/// A set is possible when its size lies between <see cref="AtLeast"/> and <see cref="AtMost"/> and it meets every set of
/// <see cref="Flagged"/>. Its probability is in proportion to the product of the weights. Immutable and thread safe.
/// </remarks>
public sealed record TieBelief
{
    /// <summary>The most candidates a belief can have.</summary>
    public const int MostCandidates = 64;

    TieBelief(ImmutableArray<TieCandidate> candidates, int atLeast, int atMost)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(candidates.Length, MostCandidates, nameof(candidates));
        if (candidates.Any(each => each.Tied <= 0 || each.Free <= 0)) throw new ArgumentException("Weights must be above 0.", nameof(candidates));
        (Candidates, AtLeast, AtMost) = (candidates, atLeast, Math.Min(atMost, candidates.Length));
    }

    /// <summary>The candidates.</summary>
    public ImmutableArray<TieCandidate> Candidates { get; }

    /// <summary>The fewest that are tied.</summary>
    public int AtLeast { get; }

    /// <summary>The most that are tied.</summary>
    public int AtMost { get; }

    /// <summary>Sets of ids of which at least one is tied: what flagged trials left.</summary>
    public ImmutableArray<ImmutableArray<string>> Flagged { get; init; } = [];

    /// <summary>Each is tied with its own probability, whatever the others are.</summary>
    /// <exception cref="ArgumentException">There are too many candidates, or a probability is not between 0 and 1.</exception>
    public static TieBelief Independent(IEnumerable<(string Id, decimal Probability)> candidates) =>
        new([.. candidates.Select(each => new TieCandidate(each.Id, each.Probability, 1 - each.Probability))], 0, MostCandidates);

    /// <summary>Exactly one is tied; probabilities in proportion to the weights.</summary>
    /// <exception cref="ArgumentException">There are too many candidates or none, or a weight is not above 0.</exception>
    public static TieBelief ExactlyOne(IEnumerable<(string Id, decimal Weight)> candidates) =>
        new([.. candidates.Select(each => new TieCandidate(each.Id, each.Weight, 1))], 1, 1);

    /// <summary>Every set of so many is as probable as any other.</summary>
    /// <exception cref="ArgumentException">There are too many candidates.</exception>
    public static TieBelief Uniform(IEnumerable<string> candidates, int atLeast, int atMost) =>
        new([.. candidates.Select(id => new TieCandidate(id, 1, 1))], atLeast, atMost);

    internal TieBelief Unweighted() => new([.. Candidates.Select(each => new TieCandidate(each.Id, 1, 1))], AtLeast, AtMost) { Flagged = Flagged };

    /// <summary>The same, knowing that no more than so many are tied.</summary>
    public TieBelief WithAtMost(int most) => new(Candidates, Math.Min(AtLeast, most), Math.Min(AtMost, most)) { Flagged = Flagged };
}
