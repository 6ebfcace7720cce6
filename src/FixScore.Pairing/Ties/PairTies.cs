using System.Collections.Immutable;
using FixScore.Pairing.Inference;

namespace FixScore.Pairing.Ties;

/// <summary>Which parts the software ties to the main board and which to each other, as far as swap trials prove it.</summary>
/// <remarks>
/// <para><b>The question.</b> A fingerprint reader may be tied to its display rather than to the main board. Here a
/// hypothesis is a set of <see cref="Tie"/>s, to the main board and between parts, one for all units in one
/// <see cref="SwapContext"/>. A flagged check says that one of the ties that the trial breaks is real and touches what the
/// check implicates: for a tie to the main board the part is implicated, for one between parts either end. A trial whose
/// tested checks all work says that none of the ties it breaks is real, except those that touch what an untested check
/// implicates; a check that names no parts implicates all. Controls and their faults are read as in
/// <see cref="PairingVerdicts"/>.</para>
/// <para><b>The answer</b> is exact and reached in the same way: strike what clean trials exclude out of every flag; a tie is
/// in every explanation just when some flag is left with it alone, and nothing explains the trials just when some flag is
/// left with nothing.</para>
/// <para><b>Two questions.</b> <see cref="PairingVerdicts"/> answers what follows if the main board is the only partner; this
/// fact drops that assumption. The answers are never mixed. Where both are consistent they exclude the same ties to the main
/// board, and what is tied to it here is paired there; what is paired there need not be tied to it here, as
/// <see cref="ContextTies.Findings"/> tell. To tell a tie to the main board from one between parts, put in both parts from
/// one unit, or the main board alone.</para>
/// <para>Immutable and thread safe. Work grows with the square of the number of parts, times trials. Source: group testing
/// with individual clearance; the rules are our own.</para>
/// </remarks>
public sealed class PairTies : IFact<PairTies>
{
    PairTies(ImmutableArray<ContextTies> contexts) => Contexts = contexts;

    /// <summary>The contexts in which something was tried, ordered by their first trial in the record; empty without trials.</summary>
    public ImmutableArray<ContextTies> Contexts { get; }

    /// <summary>Whether every context is consistent.</summary>
    public bool IsConsistent => Contexts.All(context => context.IsConsistent);

    /// <inheritdoc/>
    public static PairTies From(TeardownCase source, CancellationToken cancellation)
    {
        var groups = source.Derive<PartGroups>();
        var ties = new TieCandidates(new ForeignParts(source.Record, groups), groups);
        var contexts = ImmutableArray.CreateBuilder<ContextTies>();
        foreach (var trials in source.Record.Swaps.GroupBy(SwapContext.Of))
        {
            cancellation.ThrowIfCancellationRequested();
            contexts.Add(TieInference.Infer(trials.Key, [.. trials], ties));
        }
        return new(contexts.ToImmutable());
    }
}
