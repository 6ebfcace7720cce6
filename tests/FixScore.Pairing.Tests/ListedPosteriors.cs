using FixScore.Records;

namespace FixScore.Pairing.Tests;

/// <summary>Bayes' rule by definition: every set of parts, weighed with its prior and with each statement of the trials. Shares no code with what it checks.</summary>
sealed class ListedPosteriors
{
    readonly string[] parts;
    readonly Dictionary<string, double> probability = [];
    readonly double[] priors;

    public ListedPosteriors(TeardownRecord record, SwapContext context, NoiseModel noise)
    {
        var trials = record.Swaps.Where(trial => SwapContext.Of(trial) == context).ToArray();
        var truth = new BruteForce(record, trials);
        parts = truth.Parts;
        priors = [.. parts.Select(id => (double)TiePriors.BuiltIn.Of(record.Parts.AsArray().Single(part => part.Id == id).Role))];
        var weights = Enumerable.Range(0, 1 << parts.Length).Select(tied => Prior(tied) * truth.Likelihood(tied, noise)).ToArray();
        var whole = weights.Sum();
        for (var i = 0; i < parts.Length; i++) probability[parts[i]] = weights.Where((_, tied) => (tied >> i & 1) != 0).Sum() / whole;
    }

    public double Of(string part) => probability[part];

    double Prior(int tied) => priors.Select((prior, i) => (tied >> i & 1) != 0 ? prior : 1 - prior).Aggregate(1.0, (a, b) => a * b);
}
