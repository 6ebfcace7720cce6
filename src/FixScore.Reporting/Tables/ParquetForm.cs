using System.Collections.Immutable;
using Parquet;
using Parquet.Schema;

namespace FixScore.Reporting.Tables;

/// <summary>Writes tables as Apache Parquet: every column may be empty, numbers are the nearest binary ones, meanings go into the metadata.</summary>
public sealed class ParquetForm : IDisposable
{
    readonly ImmutableArray<Column> columns;
    readonly DataField[] fields;
    readonly ParquetWriter writer;

    /// <summary>Begins a file.</summary>
    /// <param name="columns">The columns.</param>
    /// <param name="output">Where to write; not closed.</param>
    public ParquetForm(ImmutableArray<Column> columns, Stream output)
    {
        this.columns = columns;
        fields = [.. columns.Select(Field)];
        writer = Done(ParquetWriter.CreateAsync(new ParquetSchema(fields), output, new() { CompressionMethod = CompressionMethod.Snappy }));
        writer.CustomMetadata = columns.ToDictionary(column => column.Name, column => column.Meaning);
    }

    /// <summary>Writes a whole table.</summary>
    public static byte[] Of(ResultTable table)
    {
        using var output = new MemoryStream();
        using (var form = new ParquetForm(table.Columns, output)) form.Write(table.Rows);
        return output.ToArray();
    }

    /// <summary>Writes rows as a group of their own; each has a cell for every column.</summary>
    public void Write(IReadOnlyList<ImmutableArray<Cell>> rows)
    {
        using var group = writer.CreateRowGroup();
        for (var i = 0; i < fields.Length; i++) Done(Write(group, i, [.. rows.Select(row => row[i])]));
    }

    /// <summary>Ends the file.</summary>
    public void Dispose() => Done(writer.DisposeAsync().AsTask());

    Task Write(ParquetRowGroupWriter group, int column, Cell[] cells) => columns[column].Kind switch
    {
        ColumnKind.Text => group.WriteAsync(fields[column], [.. cells.Select(cell => cell.Text!)]),
        ColumnKind.Number => group.WriteAsync<double>(fields[column], cells.Select(cell => (double?)cell.Number).ToArray()),
        _ => group.WriteAsync<long>(fields[column], cells.Select(cell => (long?)cell.Number).ToArray()),
    };

    static DataField Field(Column column) => column.Kind switch
    {
        ColumnKind.Text => new DataField<string>(column.Name),
        ColumnKind.Number => new DataField<double?>(column.Name),
        _ => new DataField<long?>(column.Name),
    };

    // Everything is in memory or a file: there is nothing to wait for but the disk.
    static T Done<T>(Task<T> task) => task.GetAwaiter().GetResult();

    static void Done(Task task) => task.GetAwaiter().GetResult();
}
