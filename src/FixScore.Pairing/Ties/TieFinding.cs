using System.Collections.Immutable;

namespace FixScore.Pairing.Ties;

/// <summary>Where the reading with ties between parts differs from the one with ties to the main board alone.</summary>
/// <param name="Kind">What differs.</param>
/// <param name="Part">
/// For <see cref="TieFindingKind.MayBeBetweenParts"/> the part concerned, for a group its first that can be foreign;
/// <c>null</c> for the other kind.
/// </param>
/// <param name="Between">Ties between parts that the trials leave possible as the reason, board ties left out; one at least.</param>
/// <param name="Trials">Ids of the flagged trials concerned, in the order of the record.</param>
public sealed record TieFinding(TieFindingKind Kind, string? Part, ImmutableArray<Tie> Between, ImmutableArray<string> Trials);

/// <summary>How the two readings of the same trials differ.</summary>
public enum TieFindingKind
{
    /// <summary>No set of parts tied to the main board explains the trials, but ties between parts do.</summary>
    OnlyPartsExplain,

    /// <summary><see cref="PairingVerdicts"/> has the part as paired, but ties between parts explain the trials as well.</summary>
    MayBeBetweenParts,
}
