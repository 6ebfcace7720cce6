using System.Collections.Immutable;

namespace FixScore.Analysis.Assessors;

/// <summary>How far observers agree beyond chance: Krippendorff's alpha, for any number of observers, missing values and four levels of measurement.</summary>
/// <remarks>
/// K. Krippendorff, Computing Krippendorff's Alpha-Reliability, 2011: 1 less observed over expected disagreement. Units with fewer
/// than two values drop out. Own code: the library of statistics has none. Immutable and thread safe.
/// </remarks>
/// <param name="Level">The level of measurement.</param>
/// <param name="Values">The values that occur, ascending.</param>
/// <param name="Coincidences">How often values stand together in a unit: each pair of values weighs 1 / (values in the unit - 1).</param>
public sealed record KrippendorffAlpha(MeasurementLevel Level, ImmutableArray<decimal> Values, ImmutableArray<ImmutableArray<double>> Coincidences)
{
    /// <summary>Compares observers.</summary>
    /// <param name="observers">For each observer a value for each unit; <c>null</c> is missing.</param>
    /// <param name="level">The level of measurement.</param>
    /// <exception cref="ArgumentException">Observers differ in length, or a value is below 0 at level <see cref="MeasurementLevel.Ratio"/>.</exception>
    public static KrippendorffAlpha Of(ImmutableArray<ImmutableArray<decimal?>> observers, MeasurementLevel level)
    {
        if (observers.Any(observer => observer.Length != observers[0].Length)) throw new ArgumentException("All must observe the same units.", nameof(observers));
        if (level == MeasurementLevel.Ratio && observers.Any(observer => observer.Any(value => value < 0m))) throw new ArgumentException("Ratios ask for values of 0 or more.", nameof(observers));
        decimal[][] units = [.. Enumerable.Range(0, observers.IsEmpty ? 0 : observers[0].Length)
            .Select(unit => observers.Select(observer => observer[unit]).OfType<decimal>().ToArray()).Where(values => values.Length > 1)];
        ImmutableArray<decimal> all = [.. units.SelectMany(values => values).Distinct().Order()];
        return new(level, all, Pairing.Of(units, all));
    }

    /// <summary>How many values could be paired with another.</summary>
    public double Pairable => Counts.Sum();

    /// <summary>1 for full agreement, 0 for chance, below 0 for less than chance; <c>null</c> when all values are equal or none can be paired.</summary>
    /// <remarks>Krippendorff asks for .800 and takes .667 as the lowest for tentative conclusions (Content Analysis, from memory).</remarks>
    public double? Alpha
    {
        get
        {
            var counts = Counts;
            var (observed, expected) = (0.0, 0.0);
            for (var one = 0; one < Values.Length; one++)
                for (var other = 0; other < Values.Length; other++)
                {
                    var difference = Pairing.SquaredDifference(Level, Values, counts, one, other);
                    observed += Coincidences[one][other] * difference;
                    expected += counts[one] * counts[other] * difference;
                }
            return expected == 0 ? null : 1 - (Pairable - 1) * observed / expected;
        }
    }

    double[] Counts => [.. Coincidences.Select(row => Math.Round(row.Sum()))];
}
