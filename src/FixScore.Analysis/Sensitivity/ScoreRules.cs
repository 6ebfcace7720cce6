using FixScore.Analysis.Chance;

namespace FixScore.Analysis.Sensitivity;

/// <summary>Makes one score of the values of a unit; more is better.</summary>
/// <param name="values">A value for each criterion.</param>
/// <param name="weights">A relative weight for each, 0 or more.</param>
public delegate double ScoreRule(ReadOnlySpan<double> values, ReadOnlySpan<double> weights);

/// <summary>Makes scores of the values of all units at once; more is better.</summary>
/// <param name="rows">For each unit a value for each criterion; not a number where the criterion does not count for the unit.</param>
/// <param name="weights">A relative weight for each criterion, 0 or more.</param>
/// <param name="scores">Room for a score for each unit, all 0.</param>
public delegate void TableRule(ReadOnlySpan<double[]> rows, ReadOnlySpan<double> weights, Span<double> scores);

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

    /// <summary>A. H. Copeland's rule, an outranking without compensation: units that more weights speak for than against, less those the other way; only the order on each criterion counts.</summary>
    /// <remarks>The same as <see cref="Aggregating.SupportMatrix.Copeland"/>. A criterion has no voice on a pair where it does not count for one of both.</remarks>
    public static void Copeland(ReadOnlySpan<double[]> rows, ReadOnlySpan<double> weights, Span<double> scores)
    {
        for (var one = 0; one < rows.Length; one++)
            for (var other = one + 1; other < rows.Length; other++)
            {
                var (with, against) = (0.0, 0.0);
                for (var i = 0; i < weights.Length; i++)
                    if (rows[one][i] > rows[other][i]) with += weights[i];
                    else if (rows[one][i] < rows[other][i]) against += weights[i];
                scores[one] += with.CompareTo(against);
                scores[other] += against.CompareTo(with);
            }
    }
}
