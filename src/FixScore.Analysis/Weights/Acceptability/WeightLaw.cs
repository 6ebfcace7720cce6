using System.Collections.Immutable;

namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>How likely each set of weights is taken to be; weights are 0 or more and sum to 1. Immutable and thread safe.</summary>
public sealed record WeightLaw
{
    WeightLaw() { }

    /// <summary>All weights are equally likely: nothing is known of what matters.</summary>
    public static WeightLaw Uniform { get; } = new();

    /// <summary>All weights with w1 >= w2 >= ... are equally likely: only the order of importance is known, the first criterion being the most important.</summary>
    public static WeightLaw Ordered { get; } = new() { IsOrdered = true };

    /// <summary>Dirichlet parameters, one for each criterion; empty unless weights are known about.</summary>
    internal ImmutableArray<double> Shapes { get; private init; } = [];

    internal bool IsOrdered { get; private init; }

    /// <summary>Weights around given ones: a Dirichlet law whose means they are.</summary>
    /// <param name="weights">Relative weights, one for each criterion; all above 0.</param>
    /// <param name="concentration">Sum of the law's parameters, above 0: a share w varies with variance w (1 - w) / (concentration + 1). As many as there are criteria with equal weights is <see cref="Uniform"/>.</param>
    /// <exception cref="ArgumentException">There is no weight, or one is not above 0.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The concentration is not above 0.</exception>
    public static WeightLaw Around(ImmutableArray<decimal> weights, decimal concentration)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(concentration, 0m);
        if (weights.IsEmpty || weights.Any(weight => weight <= 0m)) throw new ArgumentException("Each weight must be above 0.", nameof(weights));
        var sum = weights.Sum();
        return new() { Shapes = [.. weights.Select(weight => (double)(concentration * weight / sum))] };
    }

    /// <exception cref="ArgumentException">The law is about another number of criteria.</exception>
    internal void Check(int criteria)
    {
        if (Shapes.Length != 0 && Shapes.Length != criteria) throw new ArgumentException("Each criterion needs a weight.");
    }
}
