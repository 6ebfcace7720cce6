using System.Collections.Immutable;

namespace FixScore.Reporting.Tables;

/// <summary>A table of results, to be written in several forms. Immutable and thread safe.</summary>
/// <param name="Name">Its name, a slug: the name of its file.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Columns">The columns.</param>
/// <param name="Rows">The rows, each with a cell for every column.</param>
public sealed record ResultTable(string Name, string Title, ImmutableArray<Column> Columns, ImmutableArray<ImmutableArray<Cell>> Rows);
