using System.Collections.Immutable;
using FixScore.Analysis.Aggregating;
using FixScore.Analysis.Agreement;
using FixScore.Analysis.Ranking;

namespace FixScore.Analysis.Comparing;

/// <summary>How the ranking of the units of a table depends on the rule that makes one score of their values. Stateless, so safe to use from any thread.</summary>
public static class RuleComparison
{
    /// <summary>Compares rules; in the result the rules stand for profiles, by the words of the command line.</summary>
    /// <param name="table">Comparable values, more is better.</param>
    /// <param name="weights">Relative weights, one for each criterion, 0 or more.</param>
    /// <param name="rules">The rules, one at least.</param>
    /// <exception cref="ArgumentException">The table or the weights do not fit, or a rule cannot take the values: see <see cref="OrderRule"/>.</exception>
    public static ProfileComparison Of(UnitTable table, ImmutableArray<decimal> weights, ImmutableArray<OrderRule> rules)
    {
        if (table.Checked().Units.IsEmpty || rules.IsEmpty) throw new ArgumentException("There is nothing to compare.", nameof(rules));
        ScoredUnits[] scored = [.. rules.Select(rule => Scored(table, weights, rule))];
        var ranks = scored.Select(each => Ranks.Of(each.Scores)).ToArray();
        return new()
        {
            Devices = table.Units,
            Profiles = [.. scored.Select(each => each.Name)],
            Scores = [.. table.Units.Select((_, unit) => scored.Select(each => each.Scores[unit]).ToImmutableArray())],
            Ranks = [.. table.Units.Select((_, unit) => ranks.Select(each => each[unit]).ToImmutableArray())],
            Pairs = ProfilePairs.Of(scored, ranks, [.. rules.Select(rule => rule == OrderRule.Arithmetic)]),
            Dominance = Dominance.Of(table),
        };
    }

    static ScoredUnits Scored(UnitTable table, ImmutableArray<decimal> weights, OrderRule rule) => rule switch
    {
        OrderRule.Arithmetic => new("arithmetic", Aggregation.Scores(table, weights, Aggregate.WeightedArithmetic), Aggregation.Contributions(table, weights)),
        OrderRule.Geometric => new("geometric", Aggregation.Scores(table, weights, Aggregate.WeightedGeometric)),
        OrderRule.Harmonic => new("harmonic", Aggregation.Scores(table, weights, Aggregate.WeightedHarmonic)),
        OrderRule.Minimum => new("minimum", Aggregation.Scores(table, weights, Aggregate.Minimum)),
        OrderRule.Borda => new("borda", [.. SupportMatrix.Of(table, weights).Borda().Select(points => (Interval)points)]),
        OrderRule.Copeland => new("copeland", [.. SupportMatrix.Of(table, weights).Copeland().Select(points => (Interval)points)]),
        _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, "Not a rule."),
    };
}
