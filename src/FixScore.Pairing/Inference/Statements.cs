using System.Collections.Frozen;
using System.Collections.Immutable;

namespace FixScore.Pairing.Inference;

/// <summary>A flagged check: at least one of <paramref name="Suspects"/> is tied.</summary>
/// <param name="Trial">Number of the trial in its context.</param>
/// <param name="Seen">The check.</param>
/// <param name="Suspects">Ids of the foreign parts it implicates, in the order of the record.</param>
/// <param name="Unsettled">Ids of the foreign parts that some untested check of the trial implicates.</param>
sealed record Flag(int Trial, FlaggedCheck Seen, ImmutableArray<string> Suspects, ImmutableArray<string> Unsettled);

/// <summary>A flag and which of its suspects no clean trial clears.</summary>
/// <param name="Number">Number of the flag in its context.</param>
/// <param name="Flag">The flag.</param>
/// <param name="Left">Keys of those suspects, in their order.</param>
/// <param name="Explained">Whether one of them is proven to be tied.</param>
sealed record Blame(int Number, Flag Flag, ImmutableArray<string> Left, bool Explained);

/// <summary>A clean trial: none of <paramref name="Parts"/> is tied.</summary>
/// <param name="Trial">Number of the trial in its context.</param>
/// <param name="Parts">Ids of the parts it clears, in the order of the record.</param>
/// <param name="Controls">
/// For each flag that was set aside, the numbers of the controls that show the fault; the trial clears only if one of each
/// is right.
/// </param>
sealed record Clearance(int Trial, ImmutableArray<string> Parts, ImmutableArray<ImmutableArray<int>> Controls)
{
    readonly FrozenSet<string> parts = Parts.ToFrozenSet(StringComparer.Ordinal);

    public bool Clears(string part) => parts.Contains(part);
}

/// <summary>All that the trials of one context say.</summary>
/// <param name="Flags">Flagged checks, in the order of the record.</param>
/// <param name="Clearances">Clean trials, in the order of the record.</param>
/// <param name="Foreign">Ids of parts that were foreign in some trial.</param>
sealed record Statements(ImmutableArray<Flag> Flags, ImmutableArray<Clearance> Clearances, ImmutableHashSet<string> Foreign);
