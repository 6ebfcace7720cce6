using System.Collections.Immutable;
using FixScore.Cli.Terminal;
using FixScore.Pairing;

namespace FixScore.Cli.Commands.Diff;

/// <summary>What swap trials prove otherwise, for people.</summary>
sealed class ProofView(Canvas canvas)
{
    public void Show(ImmutableArray<ProofChange> changes)
    {
        if (changes.IsEmpty) return;
        canvas.Line();
        canvas.Heading("What swap trials prove");
        foreach (var change in changes)
            canvas.Item(1, "*", $"{change.Part}: now {Told(change.New)}; before {Told(change.Old)} ({Context(change)})");
    }

    static string Told(ImmutableArray<PartProof> proofs) =>
        string.Join(" and ", proofs.Select(proof => $"{Word.Of(proof.Verdict)}{(proof.Worst.Length > 0 ? ", at worst " + proof.Worst : "")}{(proof.Software is { } software ? $" on {software}" : "")}"));

    static string Context(ProofChange change) =>
        $"lock state {(change.LockState is { } state ? Word.Of(state) : "unknown")}, procedure {(change.Procedure is { } procedure ? Word.Of(procedure) : "unknown")}";
}
