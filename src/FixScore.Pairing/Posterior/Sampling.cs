using System.Collections.Immutable;

namespace FixScore.Pairing.Posterior;

/// <summary>Probabilities by Gibbs sampling: each part in turn is drawn given all others, and the probabilities it is drawn with are averaged.</summary>
sealed class Sampling
{
    const int Chains = 8;

    readonly ImmutableArray<Factor> factors;
    readonly double[] priors;
    readonly int[][] about;
    readonly bool[] tied;
    readonly int[] met;

    Sampling(ImmutableArray<Factor> factors, double[] priors)
    {
        (this.factors, this.priors) = (factors, priors);
        about = [.. priors.Select((_, part) => Enumerable.Range(0, factors.Length).Where(i => factors[i].Parts.Contains(part)).ToArray())];
        (tied, met) = (new bool[priors.Length], new int[factors.Length]);
    }

    /// <summary>Means and their standard errors, from the spread of the chains; the first tenth of a chain is left out.</summary>
    public static (double Mean, double Error)[] Of(ImmutableArray<Factor> factors, double[] priors, ulong seed, int sweeps, CancellationToken cancellation)
    {
        var chains = Enumerable.Range(0, Chains).Select(chain => new Sampling(factors, priors).Run(new(unchecked(seed + ((ulong)chain << 32))), sweeps, cancellation)).ToArray();
        return [.. Enumerable.Range(0, priors.Length).Select(part => Summary([.. chains.Select(means => means[part])]))];
    }

    double[] Run(SplitMix random, int sweeps, CancellationToken cancellation)
    {
        var (sums, skipped) = (new double[priors.Length], sweeps / 10);
        for (var part = 0; part < priors.Length; part++) Set(part, random.Unit() < priors[part]);
        for (var sweep = -skipped; sweep < sweeps; sweep++)
        {
            cancellation.ThrowIfCancellationRequested();
            for (var part = 0; part < priors.Length; part++)
            {
                var probability = Given(part);
                if (sweep >= 0) sums[part] += probability;
                Set(part, random.Unit() < probability);
            }
        }
        return [.. sums.Select(sum => sum / sweeps)];
    }

    double Given(int part)
    {
        var (with, without) = (priors[part], 1 - priors[part]);
        foreach (var i in about[part])
        {
            with *= factors[i].Met;
            without *= met[i] > (tied[part] ? 1 : 0) ? factors[i].Met : factors[i].Missed;
        }
        return with / (with + without);
    }

    void Set(int part, bool value)
    {
        if (tied[part] == value) return;
        tied[part] = value;
        foreach (var i in about[part]) met[i] += value ? 1 : -1;
    }

    static (double, double) Summary(double[] means)
    {
        var mean = means.Sum() / Chains;
        return (mean, Math.Sqrt(means.Sum(each => (each - mean) * (each - mean)) / (Chains - 1) / Chains));
    }
}
