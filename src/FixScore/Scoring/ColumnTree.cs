namespace FixScore.Scoring;

/// <summary>The top of a score, that can be made again with other values of some of its lines. Not thread safe: the rows change.</summary>
sealed class ColumnTree
{
    readonly Row root;
    readonly Row[] columns, above;

    /// <param name="source">The record.</param>
    /// <param name="profile">The rules.</param>
    /// <param name="paths">Paths of lines, none below another, that together make the total.</param>
    /// <param name="cancellation">Cancels the run.</param>
    public ColumnTree(TeardownCase source, Profile profile, IEnumerable<string> paths, CancellationToken cancellation)
    {
        root = new Evaluation(profile, source, cancellation).Run();
        var rows = root.SelfAndBelow().ToDictionary(row => row.Path, StringComparer.Ordinal);
        columns = [.. paths.Select(path => rows[path])];
        var top = columns.SelectMany(Above).ToHashSet();
        above = [.. root.SelfAndBelow().Where(top.Contains).Reverse()];
        Values = [.. columns.Select(row => new ColumnValue(row.State, row.Value))];
    }

    /// <summary>The lines as they are.</summary>
    public ColumnValue[] Values { get; }

    /// <summary>The total before gates with other lines.</summary>
    public Interval With(ReadOnlySpan<ColumnValue> values)
    {
        for (var i = 0; i < columns.Length; i++) (columns[i].State, columns[i].Value) = (values[i].State, values[i].Value);
        foreach (var row in above)
        {
            row.State = RowState.Counts;
            Combination.Settle(row);
        }
        return root.State == RowState.Counts ? root.Value : root.Node.Scale.Whole;
    }

    static IEnumerable<Row> Above(Row row)
    {
        for (var each = row.Parent; each is not null; each = each.Parent) yield return each;
    }
}

/// <summary>A line: whether it counts, and its value.</summary>
readonly record struct ColumnValue(RowState State, Interval Value);
