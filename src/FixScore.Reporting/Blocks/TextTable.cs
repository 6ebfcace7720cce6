using System.Collections.Immutable;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace FixScore.Reporting.Blocks;

/// <summary>A table as text. Where it is too wide, drawings go first, then what is extra; what still has no room becomes a list.</summary>
static class TextTable
{
    const int WidestCell = 48;
    const int LongestCell = 240;
    const int BarWidth = 16;
    const int Gap = 3;
    const int LeastText = 14;

    public static IEnumerable<IRenderable> Of(Grid grid, int width)
    {
        if (grid.Rows.IsEmpty) yield break;
        if (grid.Caption.Length > 0) yield return new Text(PlainText.Of(grid.Caption));
        int[] all = [.. Enumerable.Range(0, grid.Columns.Length)];
        int[] plain = [.. all.Where(column => !IsDrawn(grid.Columns[column]))];
        int[] least = [.. plain.Where(column => !grid.Columns[column].IsExtra)];
        var fitting = new[] { all, plain, least }.FirstOrDefault(columns => Width(grid, columns, WidestCell) <= width)
            ?? new[] { plain, least }.FirstOrDefault(columns => Width(grid, columns, LeastText) <= width);
        yield return fitting is null ? List(grid) : Table(grid, fitting);
    }

    // Words can be wrapped down to a width; numbers and digests cannot.
    static int Width(Grid grid, int[] columns, int narrowest) => Gap + columns.Sum(index => Gap + (grid.Columns[index].Kind switch
    {
        GridKind.Bar or GridKind.Span => BarWidth,
        GridKind.Number => Longest(grid, index),
        GridKind.Code => grid.Rows.Max(row => row[index].Text.Length),
        _ => Math.Min(Longest(grid, index), narrowest),
    }));

    static int Longest(Grid grid, int index) => Math.Min(WidestCell, grid.Rows.Select(row => row[index].Text.Length + (2 * row[index].Depth)).Append(grid.Columns[index].Title.Length).Max());

    static bool IsDrawn(GridColumn column) => column.Kind is GridKind.Bar or GridKind.Span;

    static Table Table(Grid grid, int[] columns)
    {
        var table = new Table().Border(TableBorder.Simple);
        foreach (var column in columns.Select(index => grid.Columns[index]))
            table.AddColumn(column.Kind == GridKind.Number ? new TableColumn(Cell(column.Title)).RightAligned().NoWrap() : IsDrawn(column) ? new TableColumn(Cell("")).NoWrap() : new TableColumn(Cell(column.Title)));
        foreach (var row in grid.Rows) table.AddRow(columns.Select(index => Cell(row[index], grid.Columns[index])));
        return table;
    }

    static Rows List(Grid grid) => new(grid.Rows.Select(row => new Padder(new Text(PlainText.Of(Told(grid, row))), new Padding(2, 0, 0, 0))));

    static string Told(Grid grid, ImmutableArray<GridCell> row) => $"- {row[0].Text}: " + string.Join("; ", row.Index().Skip(1)
        .Where(cell => cell.Item.Text.Length > 0).Select(cell => $"{grid.Columns[cell.Index].Title.ToLowerInvariant()} {cell.Item.Text}"));

    static Text Cell(GridCell cell, GridColumn column) => IsDrawn(column) ? new(TextBar.Of(cell.Extent, column.Kind)) : Cell(new string(' ', 2 * cell.Depth) + cell.Text);

    static Text Cell(string text) => new(PlainText.Of(text, LongestCell));
}
