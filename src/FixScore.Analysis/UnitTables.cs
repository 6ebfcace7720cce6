using System.Collections.Immutable;
using FixScore.Numbers;

namespace FixScore.Analysis;

/// <summary>Makes tables of units and asks them for exact values. Stateless, so safe to use from any thread.</summary>
public static class UnitTables
{
    /// <summary>A table whose values are all known exactly.</summary>
    /// <param name="units">Names of the units; distinct.</param>
    /// <param name="criteria">Names of the criteria; distinct.</param>
    /// <param name="rows">A row for each unit, a value for each criterion.</param>
    /// <exception cref="ArgumentException">A name stands twice, or the rows do not fit the names.</exception>
    public static UnitTable Of(ImmutableArray<string> units, ImmutableArray<string> criteria, IEnumerable<ImmutableArray<decimal>> rows) =>
        new UnitTable(units, criteria, [.. rows.Select(row => row.Select(value => (Interval)value).ToImmutableArray())]).Checked();

    /// <summary>The same table.</summary>
    /// <exception cref="ArgumentException">A name stands twice, or the rows do not fit the names.</exception>
    public static UnitTable Checked(this UnitTable table)
    {
        if (HasTwice(table.Units) || HasTwice(table.Criteria)) throw new ArgumentException("A name stands twice.", nameof(table));
        if (table.Rows.Length != table.Units.Length) throw new ArgumentException("There must be a row for each unit.", nameof(table));
        if (table.Rows.Any(row => row.Length != table.Criteria.Length)) throw new ArgumentException("Each row needs a value for each criterion.", nameof(table));
        return table;
    }

    /// <summary>Whether nothing in the table is left open.</summary>
    public static bool IsExact(this UnitTable table) => table.Rows.All(row => row.All(value => value.IsExact));

    /// <summary>The values, all of which must be exact.</summary>
    /// <exception cref="ArgumentException">A value is open.</exception>
    internal static decimal[][] ExactRows(this UnitTable table) => table.IsExact()
        ? [.. table.Rows.Select(row => row.Select(value => value.Low).ToArray())]
        : throw new ArgumentException("A value is open; only exact ones can be compared this way.", nameof(table));

    /// <summary>The middle of what a value can be.</summary>
    internal static decimal Middle(this Interval value) => value.IsExact ? value.Low : (((Rational)value.Low + value.High) / 2m).ToDecimal();

    static bool HasTwice(ImmutableArray<string> names) => names.Distinct(StringComparer.Ordinal).Count() < names.Length;
}
