using FixScore.Records;

namespace FixScore.Pairing;

/// <summary>The circumstances of a swap trial. Trials of different contexts are never held against each other.</summary>
/// <remarks>What was not observed (<c>null</c>) is a value of its own: it is equal to itself and to nothing else.</remarks>
/// <param name="LockState">State of the boot lock; <c>null</c> when not observed.</param>
/// <param name="Software">The software that ran; <c>null</c> when not observed.</param>
/// <param name="Procedure">What was done after the swap; <c>null</c> when not observed.</param>
public sealed record SwapContext(LockState? LockState, string? Software, SwapProcedure? Procedure)
{
    /// <summary>The context of a trial.</summary>
    public static SwapContext Of(SwapTrial trial) => new(trial.LockState, trial.Software, trial.Procedure);

    /// <summary>Text such as <c>lock state locked, software 1.2, procedure unknown</c>.</summary>
    public override string ToString() =>
        $"lock state {WordOf(LockState)}, software {Software ?? "unknown"}, procedure {WordOf(Procedure)}";

    static string WordOf<T>(T? word) where T : struct, Enum => word is { } known ? Word.Of(known) : "unknown";
}
