using System.Collections.Immutable;
using FixScore.Pairing;
using FixScore.Pairing.Ties;
using FixScore.Records;

namespace FixScore.Cli.Commands.Swaps;

/// <summary>A record and what its trials prove.</summary>
/// <param name="Record">The record.</param>
/// <param name="Verdicts">Verdicts on parts, context by context.</param>
/// <param name="Settling">Trials that settle what is open.</param>
/// <param name="Ties">Ties to the board and between parts, asked at once.</param>
/// <param name="Comparison">The same swap under other circumstances.</param>
/// <param name="Locks">What the boot lock costs.</param>
/// <param name="Posteriors">Probabilities when checks mislead; <c>null</c> when not asked for.</param>
sealed record InferredRecord(
    TeardownRecord Record, PairingVerdicts Verdicts, SettlingTrials Settling, PairTies Ties, ContextComparison Comparison, LockCosts Locks, TiePosteriors? Posteriors)
{
    public static InferredRecord Of(TeardownCase source, NoiseModel? noise, ulong seed, CancellationToken cancellation) => new(
        source.Record, source.Derive<PairingVerdicts>(), source.Derive<SettlingTrials>(), source.Derive<PairTies>(), source.Derive<ContextComparison>(), source.Derive<LockCosts>(),
        noise is null ? null : TiePosteriors.Of(source, noise, seed: seed, cancellation: cancellation));

    /// <summary>The trials of one context that settle what it leaves open.</summary>
    public ImmutableArray<SettlingTrial> SettlingIn(SwapContext context) => [.. Settling.Trials.Where(trial => trial.Context == context)];
}
