using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;

namespace FixScore.Reporting.Blocks;

/// <summary>Blocks as Markdown with tables. Text of records is escaped; pictures are told in words.</summary>
static partial class MarkdownForm
{
    const string Special = "\\`*_[]<>#|&~";
    const int DeepestHeading = 6;

    /// <summary>The blocks, headings from a level on; lines end with a line feed, a blank line stands between blocks.</summary>
    public static string Of(IEnumerable<Block> blocks, int level = 2) =>
        string.Join('\n', blocks.Select(block => Of(block, level)).Where(text => text.Length > 0));

    /// <summary>Text that no mark of Markdown or HTML stands in, in one line.</summary>
    public static string Escaped(string text) =>
        Opening().Replace(string.Concat(PlainText.Of(text).Select(letter => Special.Contains(letter, StringComparison.Ordinal) ? $"\\{letter}" : $"{letter}")), "$1\\$2");

    // What would open a list or underline a heading at the start of a line (CommonMark 0.31.2, 4.3 and 5.2).
    [GeneratedRegex(@"^(\d{0,9})((?<!\d)[-+=]|(?<=\d)[.)](?=\s|$))")]
    private static partial Regex Opening();

    static string Of(Block block, int level) => block switch
    {
        Section section => $"{new string('#', Math.Min(level, DeepestHeading))} {Escaped(section.Title)}\n\n{Gist(section)}{Of(section.Blocks, level + 1)}",
        Prose prose => $"{Lead(prose.Tone)}{Escaped(prose.Text)}\n",
        Items items => string.Concat(items.Entries.Select(item => $"{new string(' ', 2 * item.Level)}- {Label(item)}{Escaped(item.Text)}\n")),
        Grid grid => Of(grid),
        Picture { IsToldBeside: true } => "",
        Picture { AsTable: { } table } => Of(table),
        Picture picture => $"{Escaped(picture.InWords)}\n",
        Verbatim verbatim => $"{string.Concat(verbatim.Text.Split('\n').Select(line => $"    {line}\n"))}",
        Attachments => "",
        _ => throw new ArgumentException($"No form for {block.GetType().Name}.", nameof(block)),
    };

    static string Gist(Section section) => section.Gist.Length > 0 ? $"{Escaped(section.Gist)}\n\n" : "";

    static string Lead(Tone tone) => tone switch { Tone.Mind => "**Mind:** ", Tone.Open => "**Not known:** ", _ => "" };

    static string Label(Item item) => item.Label.Length > 0 ? $"**{Escaped(item.Label)}:** " : Lead(item.Tone);

    static string Of(Grid grid)
    {
        if (grid.Rows.IsEmpty) return "";
        int[] shown = [.. grid.Columns.Index().Where(column => column.Item.Kind is not (GridKind.Bar or GridKind.Span)).Select(column => column.Index)];
        var text = new StringBuilder();
        if (grid.Caption.Length > 0) text.Append(Escaped(grid.Caption)).Append("\n\n");
        Row(text, shown.Select(index => Escaped(grid.Columns[index].Title)));
        Row(text, shown.Select(index => grid.Columns[index].Kind switch { GridKind.Number => "---:", GridKind.Mark => ":---:", _ => "---" }));
        foreach (var row in grid.Rows) Row(text, shown.Select(index => Cell(row[index], grid.Columns[index])));
        return text.ToString();
    }

    static string Cell(GridCell cell, GridColumn column) =>
        column.Kind == GridKind.Code ? $"`{cell.Text.Replace('`', '\'').Replace('|', '/')}`" : string.Concat(Enumerable.Repeat("\u2002", cell.Depth)) + Escaped(cell.Text);

    static void Row(StringBuilder text, IEnumerable<string> cells) => text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");
}
