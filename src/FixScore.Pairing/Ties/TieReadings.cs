using System.Collections.Immutable;
using FixScore.Pairing.Inference;

namespace FixScore.Pairing.Ties;

/// <summary>Holds the reading with all ties against the one with ties to the main board alone; no flag is left with nothing.</summary>
/// <remarks>Both readings clear the same parts, so what a flag leaves to the narrow one is its ties to the main board.</remarks>
sealed class TieReadings(TieCandidates ties, ImmutableArray<Blame> flags)
{
    readonly ImmutableArray<(Blame Flag, ImmutableArray<Tie> Board, ImmutableArray<Tie> Between)> flags =
    [
        .. from flag in flags
           let left = flag.Left.Select(ties.Of).ToImmutableArray()
           select (flag, left.Where(tie => tie.IsToBoard).ToImmutableArray(), left.Where(tie => !tie.IsToBoard).ToImmutableArray()),
    ];

    public ImmutableArray<TieFinding> Findings()
    {
        var unexplained = flags.Where(flag => flag.Board.IsEmpty).ToImmutableArray();
        return unexplained.IsEmpty
            ? [.. ties.ToBoard.GroupBy(tie => ties.WithinGroupsOf(tie)[0], tie => tie.Part).Select(group => OnGroup([.. group])).OfType<TieFinding>()]
            : [Finding(TieFindingKind.OnlyPartsExplain, null, unexplained)];
    }

    TieFinding? OnGroup(ImmutableArray<string> group)
    {
        var proofs = flags.Where(flag => flag.Board.All(tie => group.Contains(tie.Part))).ToImmutableArray();
        return proofs.IsEmpty || proofs.Any(flag => flag.Between.IsEmpty) ? null : Finding(TieFindingKind.MayBeBetweenParts, group[0], proofs);
    }

    static TieFinding Finding(
        TieFindingKind kind, string? part, ImmutableArray<(Blame Flag, ImmutableArray<Tie> Board, ImmutableArray<Tie> Between)> from) => new(
        kind,
        part,
        [.. from.SelectMany(flag => flag.Between).Distinct()],
        [.. from.Select(flag => flag.Flag.Flag.Seen.Trial.Id).Distinct()]);
}
