using System.Globalization;
using System.Text;

namespace FixScore.Reporting.Sheet;

/// <summary>A bench sheet as Markdown with task lists. Text of records is escaped. The same input gives the same text. Thread safe.</summary>
public static class SheetMarkdown
{
    const string Special = "\\`*_{}[]<>()#+!|&~";

    /// <summary>The sheet; lines end with a line feed.</summary>
    /// <param name="plan">The work.</param>
    /// <param name="culture">How numbers are written.</param>
    public static string Render(SheetPlan plan, CultureInfo culture)
    {
        var (document, text) = (new SheetWording(plan, culture).Document, new StringBuilder());
        text.Append("# ").Append(Escaped(document.Title)).Append("\n\n");
        Lines(text, document.Introduction);
        foreach (var section in document.Sections)
        {
            text.Append("\n## ").Append(Escaped(section.Title)).Append("\n\n");
            Lines(text, section.Lines);
            Table(text, section);
            Lines(text, section.Below);
        }
        return text.ToString();
    }

    // A sentence of its own needs a blank line before a list and after it; deeper lines belong to the item above.
    static void Lines(StringBuilder text, IReadOnlyList<SheetLine> lines)
    {
        foreach (var (index, line) in lines.Index())
        {
            var isSentence = line is { Level: 0, Mark: SheetMark.Text };
            if (index > 0 && (isSentence || lines[index - 1] is { Level: 0, Mark: SheetMark.Text })) text.Append('\n');
            var isBelow = line.Level > 0 && lines.Take(index).Any() && LastAbove(lines, index) is not SheetMark.Text;
            text.Append(isBelow ? "  " : "").Append(Mark(line, isSentence)).Append(Escaped(line.Text)).Append('\n');
        }
    }

    static SheetMark LastAbove(IReadOnlyList<SheetLine> lines, int index) => lines.Take(index).Last(line => line.Level == 0).Mark;

    static string Mark(SheetLine line, bool isSentence) => line.Mark switch
    {
        SheetMark.Tick => "- [ ] ",
        SheetMark.Mind => "- **Caution:** ",
        _ => isSentence ? "" : "- ",
    };

    static void Table(StringBuilder text, SheetSection section)
    {
        if (section.Columns.IsEmpty) return;
        Row(text.Append('\n'), section.Columns.Prepend("Done"));
        Row(text, section.Columns.Prepend("").Select(_ => "---"));
        foreach (var row in section.Rows) Row(text, row.Select(Escaped).Prepend("\\[ \\]"));
        // The next section brings a blank line of its own.
        if (section.Below.Any()) text.Append('\n');
    }

    static void Row(StringBuilder text, IEnumerable<string> cells) => text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");

    static string Escaped(string text) => string.Concat(text.Select(letter => Special.Contains(letter, StringComparison.Ordinal) ? $"\\{letter}" : $"{letter}"));
}
