using System.Collections.Immutable;

namespace FixScore.Analysis;

/// <summary>Units compared (devices, countries, bidders) against criteria. Immutable and thread safe.</summary>
/// <remarks>A cell is an interval where the value is not fully known. In what direction more counts is the caller's to settle before ranks are asked.</remarks>
/// <param name="Units">Names of the units, one for each row; distinct.</param>
/// <param name="Criteria">Names of the criteria, one for each column; distinct.</param>
/// <param name="Rows">Values, row by row, each as long as there are criteria.</param>
public sealed record UnitTable(ImmutableArray<string> Units, ImmutableArray<string> Criteria, ImmutableArray<ImmutableArray<Interval>> Rows)
{
    /// <summary>The value of a unit on a criterion, by number.</summary>
    public Interval this[int unit, int criterion] => Rows[unit][criterion];

    /// <summary>A column, in the order of the units.</summary>
    public ImmutableArray<Interval> Column(int criterion) => [.. Rows.Select(row => row[criterion])];
}
