using System.Collections.Immutable;

namespace FixScore.Analysis.Weights;

/// <summary>A table of exact values as fractions, with weights that need not sum to 1.</summary>
sealed class WeightTable
{
    readonly Fraction[][] _rows;

    /// <exception cref="ArgumentException">A value is open, no unit, or no criterion.</exception>
    public WeightTable(UnitTable table)
    {
        if (table.Units.IsEmpty || table.Criteria.IsEmpty) throw new ArgumentException("There must be a unit and a criterion.", nameof(table));
        _rows = [.. table.Checked().ExactRows().Select(row => row.Select(value => (Fraction)value).ToArray())];
    }

    public int Units => _rows.Length;

    public int Criteria => _rows[0].Length;

    public Fraction this[int unit, int criterion] => _rows[unit][criterion];

    public Fraction Score(int unit, Fraction[] weights) => _rows[unit].Zip(weights, (value, weight) => value * weight).Sum();

    /// <summary>How far a unit is ahead of another on each criterion.</summary>
    public Fraction[] Lead(int unit, int other) => [.. _rows[unit].Zip(_rows[other], (own, others) => own - others)];

    /// <summary>Units from the best on; level ones in the order of the table.</summary>
    public int[] Order(Fraction[] weights)
    {
        var scores = Enumerable.Range(0, Units).Select(unit => Score(unit, weights)).ToArray();
        return [.. Enumerable.Range(0, Units).OrderByDescending(unit => scores[unit])];
    }

    /// <exception cref="ArgumentException">Weights do not fit, one is below 0, or none is above.</exception>
    public static Fraction[] Checked(UnitTable table, ImmutableArray<decimal> weights)
    {
        Aggregating.Weighed.Check(table, weights);
        return [.. weights.Select(weight => (Fraction)weight)];
    }
}

static class FractionSums
{
    public static Fraction Sum(this IEnumerable<Fraction> values) => values.Aggregate(default(Fraction), (sum, value) => sum + value);
}
