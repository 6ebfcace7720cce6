using FixScore.Records;

namespace FixScore.Pairing;

/// <summary>In which context further trials are made. Thread safe.</summary>
public static class PlanContexts
{
    /// <summary>
    /// Of the contexts that agree with what is given, the one with most trials, the first of several. When there is none, what
    /// is given with: locked, the software of the first unit, no procedure.
    /// </summary>
    /// <param name="record">The record.</param>
    /// <param name="lockState">The state of the boot lock; <c>null</c> for any.</param>
    /// <param name="software">The software; <c>null</c> for any.</param>
    /// <param name="procedure">What is done after a swap; <c>null</c> for any.</param>
    public static SwapContext Usual(TeardownRecord record, LockState? lockState = null, string? software = null, SwapProcedure? procedure = null) =>
        record.Swaps.GroupBy(SwapContext.Of)
            .Where(trials => Agrees(lockState, trials.Key.LockState) && (software ?? trials.Key.Software) == trials.Key.Software && Agrees(procedure, trials.Key.Procedure))
            .MaxBy(trials => trials.Count())?.Key
        ?? new(lockState ?? LockState.Locked, software ?? record.Assessment.Units.FirstOrDefault()?.Software, procedure ?? SwapProcedure.None);

    static bool Agrees<T>(T? wanted, T? seen) where T : struct, Enum => wanted is null || (seen is { } known && known.Equals(wanted.Value));
}
