using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Cli.Commands.Swaps;

/// <summary>A record and what its trials prove.</summary>
/// <param name="Record">The record.</param>
/// <param name="Verdicts">Verdicts on parts, context by context.</param>
/// <param name="Comparison">The same swap under other circumstances.</param>
/// <param name="Locks">What the boot lock costs.</param>
sealed record InferredRecord(TeardownRecord Record, PairingVerdicts Verdicts, ContextComparison Comparison, LockCosts Locks)
{
    public static InferredRecord Of(TeardownCase source) =>
        new(source.Record, source.Derive<PairingVerdicts>(), source.Derive<ContextComparison>(), source.Derive<LockCosts>());
}
