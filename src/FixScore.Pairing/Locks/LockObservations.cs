using System.Collections.Immutable;
using FixScore.Pairing.Inference;
using FixScore.Records;

namespace FixScore.Pairing.Locks;

/// <summary>A function seen at work or lost, on a unit whose lock was open or closed again.</summary>
/// <param name="Unit">Id of the unit.</param>
/// <param name="Function">The function.</param>
/// <param name="State">State of the lock.</param>
/// <param name="Procedure">What was done before; <c>null</c> when that is not known.</param>
/// <param name="Works">Whether it works; else it is lost.</param>
/// <param name="By">The swap or lock trial that shows it.</param>
sealed record LockObservation(string Unit, string Function, LockState State, SwapProcedure? Procedure, bool Works, NamedEntry By);

/// <summary>What swap and lock trials show of functions with the lock open or closed again.</summary>
static class LockObservations
{
    public static ImmutableArray<LockObservation> Of(TeardownRecord record, ForeignParts foreign) =>
    [
        .. record.Locks.Where(IsRelock).SelectMany(trial => trial.Losses, (trial, loss) => new LockObservation(trial.Unit, loss.Function, trial.To, null, false, trial)),
        .. record.Swaps.Where(trial => trial.LockState is LockState.Unlocked or LockState.Relocked).SelectMany(trial => Of(trial, foreign)),
    ];

    /// <summary>Whether the lock was closed again for certain.</summary>
    public static bool IsRelock(LockTrial trial) => trial.To == LockState.Relocked && trial.Outcome.Is(LockOutcome.Done);

    static IEnumerable<LockObservation> Of(SwapTrial trial, ForeignParts foreign)
    {
        var isControl = foreign.In(trial).IsEmpty;
        return
            from check in trial.Checks
            where check.Works() || isControl && check.IsFlag()
            select new LockObservation(foreign.ReferenceOf(trial), check.Function, trial.LockState!.Value, trial.Procedure, check.Works(), trial);
    }
}
