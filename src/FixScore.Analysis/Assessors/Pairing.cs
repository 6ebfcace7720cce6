using System.Collections.Immutable;

namespace FixScore.Analysis.Assessors;

/// <summary>Pairs of values within units, and how far two values differ.</summary>
static class Pairing
{
    public static ImmutableArray<ImmutableArray<double>> Of(decimal[][] units, ImmutableArray<decimal> all)
    {
        var table = all.Select(_ => new double[all.Length]).ToArray();
        foreach (var values in units)
            for (var i = 0; i < values.Length; i++)
                for (var j = 0; j < values.Length; j++)
                    if (i != j) table[all.BinarySearch(values[i])][all.BinarySearch(values[j])] += 1.0 / (values.Length - 1);
        return [.. table.Select(row => row.ToImmutableArray())];
    }

    public static double SquaredDifference(MeasurementLevel level, ImmutableArray<decimal> values, double[] counts, int one, int other)
    {
        if (one == other) return 0;
        return level switch
        {
            MeasurementLevel.Nominal => 1,
            MeasurementLevel.Ordinal => Square(Between(counts, Math.Min(one, other), Math.Max(one, other))),
            MeasurementLevel.Interval => Square((double)(values[one] - values[other])),
            MeasurementLevel.Ratio => Square((double)(values[one] - values[other]) / (double)(values[one] + values[other])),
            _ => throw new ArgumentOutOfRangeException(nameof(level), level, "Not a level of measurement."),
        };
    }

    // The values ranked between both, with half of each of both.
    static double Between(double[] counts, int low, int high) => counts[low..(high + 1)].Sum() - (counts[low] + counts[high]) / 2;

    static double Square(double value) => value * value;
}
