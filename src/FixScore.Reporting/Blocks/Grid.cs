using System.Collections.Immutable;

namespace FixScore.Reporting.Blocks;

/// <summary>A table. The first column names its rows.</summary>
/// <param name="Caption">What it shows.</param>
/// <param name="Columns">The columns.</param>
/// <param name="Rows">The rows, each with a cell for every column; a table without rows is left out.</param>
sealed record Grid(string Caption, ImmutableArray<GridColumn> Columns, ImmutableArray<ImmutableArray<GridCell>> Rows) : Block;

/// <summary>A column of a table.</summary>
/// <param name="Title">What stands above it.</param>
/// <param name="Kind">What it holds.</param>
sealed record GridColumn(string Title, GridKind Kind = GridKind.Text)
{
    /// <summary>Whether a narrow screen can do without it.</summary>
    public bool IsExtra { get; init; }

    public static implicit operator GridColumn(string title) => new(title);
}

/// <summary>What a column holds.</summary>
enum GridKind
{
    /// <summary>Words.</summary>
    Text,

    /// <summary>Numbers, set flush right.</summary>
    Number,

    /// <summary>A short mark that is explained next to the table, centred.</summary>
    Mark,

    /// <summary>A bar from the start of the scale, solid up to the low end, hatched up to the high end; Markdown leaves the column out.</summary>
    Bar,

    /// <summary>A band from the low to the high end with a tick in between; Markdown leaves the column out.</summary>
    Span,

    /// <summary>A digest or an id, set in a fixed width.</summary>
    Code,
}

/// <summary>A cell.</summary>
/// <param name="Text">What people read.</param>
readonly record struct GridCell(string Text)
{
    /// <summary>What is drawn in a column of bars or spans; nothing for <c>null</c>.</summary>
    public Extent? Extent { get; init; }

    /// <summary>How deep a row stands below the one that it belongs to, from 0; for the first cell.</summary>
    public int Depth { get; init; }

    public static implicit operator GridCell(string text) => new(text);
}

/// <summary>An interval on a scale, to be drawn.</summary>
/// <param name="Value">The interval.</param>
/// <param name="Scale">The scale.</param>
/// <param name="Tick">Where a tick stands; none for <c>null</c>.</param>
readonly record struct Extent(Interval Value, Scale Scale, decimal? Tick = null);
