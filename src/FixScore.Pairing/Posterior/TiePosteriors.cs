using System.Collections.Immutable;
using FixScore.Pairing.Inference;
using FixScore.Pairing.Posterior;
using FixScore.Records;

namespace FixScore.Pairing;

/// <summary>How probable it is that software ties a part, after the trials, when checks can mislead.</summary>
/// <remarks>
/// <para>Trials speak as in <see cref="PairingVerdicts"/>: a flagged check says that one of the parts it implicates is tied; a
/// clean trial says that none of the parts it clears is. Each such statement can be wrong, apart from the others: a flag
/// though none is tied with the false-flag rate of its function, a clean trial though one is tied with the largest
/// false-clean rate of the functions tested in it. A flag where one is tied, and a clean trial where none is, have the rest.
/// Bayes' rule does the rest; before the trials, ties are independent.</para>
/// <para>Without errors, paired parts have 1, cleared ones 0, suspects something between.</para>
/// <para>Parts that no statement links are reckoned apart. Exact for up to 20 linked parts, else sampled (Gibbs, Geman and Geman 1984)
/// by eight chains with a seed: the same seed gives the same bytes everywhere. Immutable and thread safe. No score uses this.</para>
/// </remarks>
public sealed class TiePosteriors
{
    TiePosteriors(ImmutableArray<ContextPosteriors> contexts) => Contexts = contexts;

    /// <summary>The contexts in which something was tried, ordered by their first trial.</summary>
    public ImmutableArray<ContextPosteriors> Contexts { get; }

    /// <summary>Reckons the probabilities.</summary>
    /// <param name="source">The record.</param>
    /// <param name="noise">How often checks mislead.</param>
    /// <param name="priors">How probable ties are before the trials; the built-in guesses, which are invented, unless given.</param>
    /// <param name="seed">Seed of the sampling, where it takes any.</param>
    /// <param name="sweeps">How often each chain looks at each part; more is more exact.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static TiePosteriors Of(
        TeardownCase source, NoiseModel noise, TiePriors? priors = null, ulong seed = 1, int sweeps = 4_000, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(sweeps, 1);
        var foreign = new ForeignParts(source.Record, source.Derive<PartGroups>());
        var reckoning = new Reckoning(source.Record, foreign, noise, priors ?? TiePriors.BuiltIn, seed, sweeps, cancellation);
        return new([.. source.Record.Swaps.GroupBy(SwapContext.Of).Select(trials => reckoning.Of(trials.Key, [.. trials]))]);
    }
}

/// <summary>Probabilities in one context.</summary>
/// <param name="Context">The context.</param>
/// <param name="Parts">Every part that can carry a code, but those of the main board's group, in the order of the record; one that was never foreign has what it had before.</param>
public sealed record ContextPosteriors(SwapContext Context, ImmutableArray<PartPosterior> Parts);

/// <summary>The probability that a part is tied.</summary>
/// <param name="Part">The part.</param>
/// <param name="Before">The probability before the trials.</param>
/// <param name="Probability">The probability after them, 0 to 1; <c>null</c> where no set of ties at all can give such trials with these rates, or where sampling cannot tell (rates of 0 with more than 20 linked parts).</param>
/// <param name="StandardError">Standard error of a sampled probability; 0 where it is exact.</param>
public sealed record PartPosterior(Part Part, decimal Before, double? Probability, double StandardError);
