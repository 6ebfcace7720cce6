using FixScore.Analysis.Chance;

namespace FixScore.Analysis.Sensitivity;

/// <summary>Makes one score of the values of a unit; more is better.</summary>
/// <param name="values">A value for each criterion.</param>
/// <param name="weights">A relative weight for each, 0 or more.</param>
public delegate double ScoreRule(ReadOnlySpan<double> values, ReadOnlySpan<double> weights);

/// <summary>Rules of aggregation in doubles, out of + - x / alone, for use in simulations; scores that are shown come from <see cref="Aggregating.Aggregation"/>.</summary>
/// <remarks>A criterion of weight 0 does not count; without any weight the score is 0. Stateless, so safe to use from any thread.</remarks>
public static class ScoreRules
{
    /// <summary>Weighted arithmetic mean: full compensation.</summary>
    public static double Arithmetic(ReadOnlySpan<double> values, ReadOnlySpan<double> weights)
    {
        var (sum, total) = (0.0, 0.0);
        for (var i = 0; i < values.Length; i++) (sum, total) = (sum + (weights[i] * values[i]), total + weights[i]);
        return total > 0 ? sum / total : 0;
    }

    /// <summary>Weighted geometric mean; 0 where a value is 0 or less.</summary>
    public static double Geometric(ReadOnlySpan<double> values, ReadOnlySpan<double> weights)
    {
        var (sum, total) = (0.0, 0.0);
        for (var i = 0; i < values.Length; i++)
        {
            if (weights[i] == 0) continue;
            if (values[i] <= 0) return 0;
            (sum, total) = (sum + (weights[i] * Elementary.Log(values[i])), total + weights[i]);
        }
        return total > 0 ? Elementary.Exp(sum / total) : 0;
    }

    /// <summary>Weighted harmonic mean; 0 where a value is 0 or less.</summary>
    public static double Harmonic(ReadOnlySpan<double> values, ReadOnlySpan<double> weights)
    {
        var (sum, total) = (0.0, 0.0);
        for (var i = 0; i < values.Length; i++)
        {
            if (weights[i] == 0) continue;
            if (values[i] <= 0) return 0;
            (sum, total) = (sum + (weights[i] / values[i]), total + weights[i]);
        }
        return total > 0 ? total / sum : 0;
    }

    /// <summary>The least value: no compensation.</summary>
    public static double Minimum(ReadOnlySpan<double> values, ReadOnlySpan<double> weights)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < values.Length; i++) if (weights[i] > 0 && values[i] < least) least = values[i];
        return double.IsFinite(least) ? least : 0;
    }
}
