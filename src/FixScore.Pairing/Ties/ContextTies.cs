using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Ties;

/// <summary>What the swap trials of one context prove about ties.</summary>
/// <param name="Context">The context.</param>
/// <param name="Trials">Its trials, controls included, in the order of the record.</param>
/// <param name="Contradictions">As <see cref="ContextVerdicts.Contradictions"/>: no set of ties explains these trials.</param>
/// <param name="AllContradictionsListed">As <see cref="ContextVerdicts.AllContradictionsListed"/>.</param>
/// <param name="ToBoard">
/// Ties to the main board, in the order of the record, of parts that are not inert and not of the main board's group. These
/// verdicts reckon with ties between parts and so prove no more than <see cref="PairingVerdicts"/>.
/// </param>
/// <param name="Between">Ties between two such parts of different groups, by the first end, then by the second, as the record has them.</param>
/// <param name="NotToldApart">
/// Sets of two or more suspects that the trials cannot tell apart: what any trial says is as true with one of them as with
/// another in its place, for they stand behind the same flags. Ordered by first tie; empty in a contradictory context. A
/// tie in no set is told apart from every other by some flag.
/// </param>
/// <param name="Findings">Where the reading with ties to the main board alone says something else; contradictions first.</param>
public sealed record ContextTies(
    SwapContext Context,
    ImmutableArray<SwapTrial> Trials,
    ImmutableArray<ImmutableArray<string>> Contradictions,
    bool AllContradictionsListed,
    ImmutableArray<TieVerdict> ToBoard,
    ImmutableArray<TieVerdict> Between,
    ImmutableArray<ImmutableArray<Tie>> NotToldApart,
    ImmutableArray<TieFinding> Findings)
{
    /// <summary>Whether some set of ties explains all trials of the context.</summary>
    public bool IsConsistent => Contradictions.IsEmpty;

    /// <summary>The verdict on a tie of a part, to the main board or to another part, ends in either order; <c>null</c> when there is none.</summary>
    public TieVerdict? Of(string partId, string? with = null) => with is null
        ? ToBoard.FirstOrDefault(verdict => verdict.Tie.Part == partId)
        : Between.FirstOrDefault(verdict => partId != with && verdict.Tie.Touches(partId) && verdict.Tie.Touches(with));
}
