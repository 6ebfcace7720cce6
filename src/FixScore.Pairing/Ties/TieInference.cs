using System.Collections.Immutable;
using FixScore.Pairing.Inference;
using FixScore.Records;

namespace FixScore.Pairing.Ties;

/// <summary>Infers what the trials of one context prove about ties.</summary>
sealed class TieInference
{
    readonly TieCandidates ties;
    readonly ContextInference inference;

    TieInference(ImmutableArray<SwapTrial> trials, TieCandidates ties)
    {
        this.ties = ties;
        inference = new(trials, ties);
    }

    public static ContextTies Infer(SwapContext context, ImmutableArray<SwapTrial> trials, TieCandidates ties)
    {
        var each = new TieInference(trials, ties);
        var contradictions = each.inference.Contradictions();
        var board = ties.ToBoard.Select(each.VerdictOn).ToImmutableArray();
        var between = ties.Between.Select(each.VerdictOn).ToImmutableArray();
        var consistent = contradictions.Sets.IsEmpty;
        return new(
            context,
            trials,
            each.inference.Named(contradictions),
            contradictions.Complete,
            board,
            between,
            consistent ? each.NotToldApart(board.Concat(between)) : [],
            consistent ? new TieReadings(ties, each.inference.Flags).Findings() : []);
    }

    TieVerdict VerdictOn(Tie tie)
    {
        var alone = inference.Conclude([TieCandidates.KeyOf(tie)]);
        var group = ties.WithinGroupsOf(tie);
        return new(tie, alone, group.Length == 1 ? alone : inference.Conclude(group));
    }

    ImmutableArray<ImmutableArray<Tie>> NotToldApart(IEnumerable<TieVerdict> verdicts)
    {
        var flags = inference.Flags
            .SelectMany(flag => flag.Left, (flag, key) => (Key: key, flag.Number))
            .ToLookup(pair => pair.Key, pair => pair.Number, StringComparer.Ordinal);
        return
        [
            .. verdicts.Where(verdict => verdict.Verdict == Verdict.Suspect)
                .GroupBy(verdict => string.Join(' ', flags[TieCandidates.KeyOf(verdict.Tie)]), verdict => verdict.Tie)
                .Select(alike => alike.ToImmutableArray())
                .Where(alike => alike.Length > 1),
        ];
    }
}
