using FixScore.Numbers;

namespace FixScore.Scoring;

/// <summary>Makes the value of a row from those of its children.</summary>
static class Combination
{
    /// <summary>Sets value and state of a row whose children have theirs.</summary>
    public static void Settle(Row row)
    {
        var counted = row.Children.Where(Counts).ToArray();
        if (counted.Length == 0)
        {
            row.State = row.Children.Exists(child => child.State == RowState.SkippedAsUnknown) ? RowState.SkippedAsUnknown : RowState.SkippedAsNotApplicable;
            return;
        }
        row.Value = row.Rule == RowRule.Hull ? Interval.HullOf(counted.Select(child => child.Value))!.Value : Both(row, counted);
    }

    // Where nothing is open both ends are the same sum: it is made once.
    static Interval Both(Row row, Row[] counted)
    {
        var low = Of(row, counted, static child => child.Value.Low);
        return Array.TrueForAll(counted, static child => child.Value.IsExact) ? low : new Interval(low, Of(row, counted, static child => child.Value.High));
    }

    public static bool Counts(Row row) => row.State == RowState.Counts && !row.GateOnly;

    /// <summary>One end of a row's value, with the ends of its children as given.</summary>
    public static decimal Of(Row row, IReadOnlyList<Row> counted, Func<Row, decimal> end)
    {
        var terms = new (decimal Weight, decimal Value)[counted.Count];
        for (var i = 0; i < terms.Length; i++) terms[i] = (row.Rule == RowRule.Aggregate ? counted[i].Weight ?? 1 : 1, end(counted[i]));
        var value = row.Rule switch
        {
            RowRule.Aggregate => Of(row.Aggregate, terms),
            RowRule.Mean => Means.WeightedArithmetic(terms),
            _ => Means.Minimum(terms),
        };
        return row.Carry is { } carry ? Rounding.To(value, carry.Decimals, carry.Rounding) : value;
    }

    static decimal Of(Aggregate aggregate, ReadOnlySpan<(decimal, decimal)> terms) => aggregate switch
    {
        Aggregate.WeightedArithmetic => Means.WeightedArithmetic(terms),
        Aggregate.WeightedGeometric => Means.WeightedGeometric(terms),
        Aggregate.WeightedHarmonic => Means.WeightedHarmonic(terms),
        Aggregate.Minimum => Means.Minimum(terms),
        _ => Means.Sum(terms),
    };
}
