using System.Collections.Immutable;

namespace FixScore.Analysis.Sensitivity;

/// <summary>Rules of aggregation, one of which is drawn: first those that make points of one unit, then those that look at all units. Immutable and thread safe, as far as the rules are.</summary>
sealed class DrawnRule(ImmutableArray<ScoreRule> rules, ImmutableArray<TableRule> tableRules)
{
    // Where nothing counts, the whole scale is possible: its middle.
    const double Anything = 0.5;

    public int Ways => rules.Length + tableRules.Length;

    /// <summary>Whether the scores of a rule are points on the scale of the values, so that a cap means something.</summary>
    public bool MakesPoints(int way) => way < rules.Length;

    /// <summary>The scores of all units.</summary>
    /// <param name="way">Number of the rule.</param>
    /// <param name="rows">A value for each unit and criterion; not a number where the criterion does not count for the unit.</param>
    /// <param name="weights">Relative weights.</param>
    public double[] Scores(int way, double[][] rows, double[] weights)
    {
        var scores = new double[rows.Length];
        if (!MakesPoints(way)) tableRules[way - rules.Length](rows, weights, scores);
        else for (var unit = 0; unit < rows.Length; unit++) scores[unit] = Score(rules[way], rows[unit], weights);
        return Array.Exists(scores, double.IsNaN) ? throw new ArgumentException("A rule gave something that is not a number.") : scores;
    }

    public static int Way(double input, int ways) => Math.Min((int)(input * ways), ways - 1);

    static double Score(ScoreRule rule, double[] row, double[] weights)
    {
        if (!Array.Exists(row, double.IsNaN)) return rule(row, weights);
        var counted = Enumerable.Range(0, row.Length).Where(i => !double.IsNaN(row[i])).ToArray();
        return counted.Length == 0 ? Anything : rule(Array.ConvertAll(counted, i => row[i]), Array.ConvertAll(counted, i => weights[i]));
    }
}
