using System.Collections.Immutable;

namespace FixScore.Reporting.Sheet;

/// <summary>What a line of the sheet is.</summary>
enum SheetMark
{
    /// <summary>A sentence.</summary>
    Text,

    /// <summary>An item of a list.</summary>
    Item,

    /// <summary>An item with a box to tick.</summary>
    Tick,

    /// <summary>A caution.</summary>
    Mind,
}

/// <summary>A line: plain text, not yet wrapped or escaped.</summary>
sealed record SheetLine(int Level, SheetMark Mark, string Text);

/// <summary>A section: lines, then a table with a box to tick in each row, when it has columns.</summary>
sealed record SheetSection(string Title, ImmutableArray<SheetLine> Lines)
{
    public ImmutableArray<string> Columns { get; init; } = [];

    public ImmutableArray<ImmutableArray<string>> Rows { get; init; } = [];

    public ImmutableArray<SheetLine> Below { get; init; } = [];
}

/// <summary>The sheet in words, the same for every form.</summary>
sealed record SheetDocument(string Title, ImmutableArray<SheetLine> Introduction, ImmutableArray<SheetSection> Sections);
