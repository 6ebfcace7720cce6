using System.Collections.Immutable;
using FixScore.Pairing.Inference;

namespace FixScore.Pairing;

/// <summary>Which parts the software ties to the main board, as far as swap trials prove it, context by context.</summary>
/// <remarks>
/// <para><b>The question.</b> The set D of tied parts is a property of the model: one D for all units in one
/// <see cref="SwapContext"/>. A part is foreign in a trial when it comes from another unit than the main board does, and is
/// not inert. A flagged check says that D holds one of the foreign parts it implicates. A trial whose tested checks all work
/// says that D holds none of its foreign parts, except those that an untested check implicates; a check that names no parts
/// implicates all. A trial without foreign parts is a control: what it flags is a fault of its host and sets flags of that
/// function on that host aside, as untested.</para>
/// <para><b>The answer</b> is exact: <see cref="Verdict.Paired"/> is what every D has that explains all trials,
/// <see cref="Verdict.Cleared"/> what none has. Flags only ask for parts and clean trials only forbid them, so no
/// D has to be listed: a part is in every D just when some flag is left with it alone once forbidden parts are struck out,
/// and there is no D just when a flag is left with nothing.</para>
/// <para><b>What is taken for granted.</b> That software ties parts to the main board only. Whether a tie between two parts
/// may be behind the same trials is a question of its own, which <see cref="Ties.PairTies"/> answers; its findings name
/// the verdicts that rest on this.</para>
/// <para>Immutable and thread safe. Source: group testing with individual clearance; the rules are our own.</para>
/// </remarks>
public sealed class PairingVerdicts : IFact<PairingVerdicts>
{
    PairingVerdicts(ImmutableArray<ContextVerdicts> contexts) => Contexts = contexts;

    /// <summary>The contexts in which something was tried, ordered by their first trial in the record; empty without trials.</summary>
    public ImmutableArray<ContextVerdicts> Contexts { get; }

    /// <summary>Whether every context is consistent.</summary>
    public bool IsConsistent => Contexts.All(context => context.IsConsistent);

    /// <inheritdoc/>
    public static PairingVerdicts From(TeardownCase source, CancellationToken cancellation)
    {
        var foreign = new ForeignParts(source.Record, source.Derive<PartGroups>());
        var contexts = ImmutableArray.CreateBuilder<ContextVerdicts>();
        foreach (var trials in source.Record.Swaps.GroupBy(SwapContext.Of))
        {
            cancellation.ThrowIfCancellationRequested();
            contexts.Add(ContextInference.Infer(trials.Key, [.. trials], foreign));
        }
        return new(contexts.ToImmutable());
    }
}
