using System.Collections.Immutable;
using FixScore.Numbers;

namespace FixScore.Analysis.Aggregating;

/// <summary>Makes one score of the values of a unit, by the same means as the scores of records. Stateless, so safe to use from any thread.</summary>
/// <remarks>
/// More is better. A score is the exact value of its formula, rounded half-even to 24 significant digits; scores that agree
/// in these are equal. Values are rounded so first. A criterion of weight 0 does not count.
/// </remarks>
public static class Aggregation
{
    /// <summary>Score of every unit. Open values give the ends of what a score can be, as every rule rises with every value.</summary>
    /// <param name="table">Comparable values: geometric and harmonic means ask for values of 0 or more.</param>
    /// <param name="weights">Relative weights, one for each criterion, 0 or more; factors where the rule is a sum.</param>
    /// <param name="rule">The rule.</param>
    /// <exception cref="ArgumentException">Weights do not fit or all are 0, or a value is below 0 where the rule forbids it.</exception>
    public static ImmutableArray<Interval> Scores(UnitTable table, ImmutableArray<decimal> weights, Aggregate rule)
    {
        Weighed.Check(table, weights);
        return [.. table.Rows.Select(row => new Interval(Score(row, weights, rule, value => value.Low), Score(row, weights, rule, value => value.High)))];
    }

    /// <summary>What each value adds to the weighted arithmetic mean: weight x value / sum of weights. The table has the same units and criteria.</summary>
    /// <inheritdoc cref="Scores"/>
    public static UnitTable Contributions(UnitTable table, ImmutableArray<decimal> weights)
    {
        Weighed.Check(table, weights);
        var sum = weights.Aggregate((Rational)0m, (sum, weight) => sum + weight);
        return table with { Rows = [.. table.Rows.Select(row => row.Select((value, criterion) => Part(value, weights[criterion] / sum)).ToImmutableArray())] };
    }

    static decimal Score(ImmutableArray<Interval> row, ImmutableArray<decimal> weights, Aggregate rule, Func<Interval, decimal> end)
    {
        (decimal, decimal)[] terms = [.. row.Select((value, i) => (weights[i], Rounding.ToSignificant(end(value)))).Where(term => term.Item1 > 0m)];
        return rule switch
        {
            Aggregate.WeightedArithmetic => Means.WeightedArithmetic(terms),
            Aggregate.WeightedGeometric => Means.WeightedGeometric(terms),
            Aggregate.WeightedHarmonic => Means.WeightedHarmonic(terms),
            Aggregate.Minimum => Means.Minimum(terms),
            Aggregate.Sum => Means.Sum(terms),
            _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, "Not a rule."),
        };
    }

    static Interval Part(Interval value, Rational share) => new((value.Low * share).ToDecimal(), (value.High * share).ToDecimal());
}
