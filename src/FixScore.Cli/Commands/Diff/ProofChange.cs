using System.Collections.Immutable;
using FixScore.Analysis.Generations;
using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Cli.Commands.Diff;

/// <summary>What swap trials prove of a part of both records, where that is not the same.</summary>
/// <param name="Part">The part's id in the new record.</param>
/// <param name="LockState">The lock state; <c>null</c> when it is not recorded.</param>
/// <param name="Procedure">What of the maker's was run; <c>null</c> when it is not recorded.</param>
/// <param name="Old">Verdicts of the old record, one for each software tried.</param>
/// <param name="New">Those of the new record.</param>
sealed record ProofChange(string Part, LockState? LockState, SwapProcedure? Procedure, ImmutableArray<PartProof> Old, ImmutableArray<PartProof> New)
{
    /// <summary>Compares contexts that differ in nothing but software, which two generations hardly share; only parts that both records tried.</summary>
    public static ImmutableArray<ProofChange> Between(RecordCase old, RecordCase @new)
    {
        var oldIds = RecordChanges.Renamed(old.Record, @new.Record);
        var before = Proofs(old).ToLookup(each => (each.Part, each.LockState, each.Procedure), each => each.Proof);
        return [.. from each in Proofs(@new)
                   group each.Proof by (each.Part, each.LockState, each.Procedure) into now
                   let was = before[(oldIds.GetValueOrDefault(now.Key.Part, now.Key.Part), now.Key.LockState, now.Key.Procedure)]
                   where was.Any() && !Told(was).SetEquals(Told(now))
                   select new ProofChange(now.Key.Part, now.Key.LockState, now.Key.Procedure, [.. was], [.. now])];
    }

    static IEnumerable<(string Part, LockState? LockState, SwapProcedure? Procedure, PartProof Proof)> Proofs(RecordCase source) =>
        from context in source.Derive<PairingVerdicts>().Contexts
        where context.IsConsistent
        from verdict in context.Parts
        where verdict.Verdict != Pairing.Verdict.Untested
        select (verdict.Part.Id, context.Context.LockState, context.Context.Procedure,
            new PartProof(verdict.Verdict, verdict.Worst.IsUnknown ? "" : string.Join(" or ", verdict.Worst.Possible().Select(Word.Of)), context.Context.Software));

    static ImmutableHashSet<(Pairing.Verdict, string)> Told(IEnumerable<PartProof> proofs) => [.. proofs.Select(proof => (proof.Verdict, proof.Worst))];
}

/// <summary>A verdict on a part.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="Worst">The worst result where it is proven; empty where it is not.</param>
/// <param name="Software">The software; <c>null</c> when it is not recorded.</param>
sealed record PartProof(Pairing.Verdict Verdict, string Worst, string? Software);
