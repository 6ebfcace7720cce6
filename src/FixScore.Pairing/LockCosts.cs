using System.Collections.Immutable;
using FixScore.Pairing.Inference;
using FixScore.Pairing.Locks;

namespace FixScore.Pairing;

/// <summary>What changes of the boot lock cost, trial by trial, checked against what other trials on the same unit show.</summary>
/// <remarks>
/// <para>A function lost when the lock was opened is expected to stay lost until it comes back as recorded: on relock, once the
/// lock is closed again; on reset, after a swap trial whose procedure is a reset; on service and never, in no trial. Held
/// against this are relock trials that were done and list the function, and swap trials with the lock open or closed again: a
/// check that works shows the function at work; one that is flagged shows it lost when no part is foreign, for else the swap
/// may be to blame. The lock is that of the main board, so a swap trial speaks of the unit that its main board comes from.</para>
/// <para>What cannot be as recorded is a contradiction. That a relock trial does not list a function which should stay lost is
/// a doubt only. Losses of trials that were refused or failed are listed and not checked: no state was reached.</para>
/// <para>Immutable and thread safe. Source: own judgement, no source.</para>
/// </remarks>
public sealed class LockCosts : IFact<LockCosts>
{
    LockCosts(ImmutableArray<LockCost> trials, ImmutableArray<TrialFinding> contradictions, ImmutableArray<TrialFinding> doubts) =>
        (Trials, Contradictions, Doubts) = (trials, contradictions, doubts);

    /// <summary>The lock trials, in the order of the record; empty when none was made or recorded.</summary>
    public ImmutableArray<LockCost> Trials { get; }

    /// <summary>Losses that cannot be as recorded.</summary>
    public ImmutableArray<TrialFinding> Contradictions { get; }

    /// <summary>Losses that may not be as recorded.</summary>
    public ImmutableArray<TrialFinding> Doubts { get; }

    /// <inheritdoc/>
    public static LockCosts From(TeardownCase source, CancellationToken cancellation)
    {
        var foreign = new ForeignParts(source.Record, source.Derive<PartGroups>());
        var checks = new LossCheck(source, LockObservations.Of(source.Record, foreign));
        ImmutableArray<CheckedLock> trials = [.. source.Record.Locks.Select(checks.Check)];
        return new(
            [.. trials.Select(each => each.Cost)],
            [.. trials.SelectMany(each => each.Contradictions)],
            [.. trials.SelectMany(each => each.Doubts)]);
    }
}
