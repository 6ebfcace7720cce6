using System.Collections.Immutable;

namespace FixScore.Analysis.Tests;

static class Support
{
    /// <summary>A table of units named A, B, ... and criteria named 1, 2, ...</summary>
    public static UnitTable Table(params ImmutableArray<decimal>[] rows) => UnitTables.Of(Units(rows.Length), Criteria(rows[0].Length), rows);

    public static UnitTable Open(params ImmutableArray<Interval>[] rows) => new UnitTable(Units(rows.Length), Criteria(rows[0].Length), [.. rows]).Checked();

    public static void Near(double expected, double? actual, double within = 1e-9) => Assert.InRange(actual!.Value, expected - within, expected + within);

    public static void Near(decimal expected, decimal actual, decimal within) => Assert.InRange(actual, expected - within, expected + within);

    /// <summary>Element by element, where two immutable arrays would be compared by identity.</summary>
    public static void Equal<T>(IEnumerable<T> expected, IEnumerable<T> actual) => Assert.Equal(expected.ToArray(), actual.ToArray());

    static ImmutableArray<string> Units(int count) => [.. Enumerable.Range(0, count).Select(i => ((char)('A' + i)).ToString())];

    static ImmutableArray<string> Criteria(int count) => [.. Enumerable.Range(1, count).Select(i => i.ToString(System.Globalization.CultureInfo.InvariantCulture))];
}
