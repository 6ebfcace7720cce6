using System.Collections.Immutable;

namespace FixScore.Pairing.Posterior;

/// <summary>Exact probabilities by going through every set of ties, in a fixed order.</summary>
static class Enumeration
{
    public const int Most = 20;

    /// <summary>Probability of each part; <c>null</c> when no set goes with the statements.</summary>
    public static double[]? Of(ImmutableArray<Factor> factors, double[] priors)
    {
        // Two halves of the parts: sums of sums keep their digits, and products of priors are made once.
        var low = priors.Length / 2;
        var (lower, upper) = (Products(priors[..low]), Products(priors[low..]));
        var (sumLower, sumUpper) = (new double[lower.Length], new double[upper.Length]);
        var masks = factors.Select(factor => factor.Parts.Aggregate(0, (mask, part) => mask | (1 << part))).ToArray();
        for (var h = 0; h < upper.Length; h++)
            for (var l = 0; l < lower.Length; l++)
            {
                var weight = lower[l] * upper[h] * Likelihood(factors, masks, (h << low) | l);
                sumLower[l] += weight;
                sumUpper[h] += weight;
            }
        var whole = sumUpper.Sum();
        return whole > 0 ? [.. Marginals(sumLower, low, whole), .. Marginals(sumUpper, priors.Length - low, whole)] : null;
    }

    static double Likelihood(ImmutableArray<Factor> factors, int[] masks, int tied)
    {
        var product = 1.0;
        for (var i = 0; i < masks.Length; i++) product *= (masks[i] & tied) != 0 ? factors[i].Met : factors[i].Missed;
        return product;
    }

    static double[] Products(double[] priors)
    {
        var products = new double[1 << priors.Length];
        for (var set = 0; set < products.Length; set++)
        {
            products[set] = 1;
            for (var i = 0; i < priors.Length; i++) products[set] *= (set >> i & 1) != 0 ? priors[i] : 1 - priors[i];
        }
        return products;
    }

    static IEnumerable<double> Marginals(double[] sums, int parts, double whole) =>
        Enumerable.Range(0, parts).Select(part => Enumerable.Range(0, sums.Length).Where(set => (set >> part & 1) != 0).Sum(set => sums[set]) / whole);
}
