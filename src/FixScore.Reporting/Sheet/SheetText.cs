using System.Globalization;
using System.Text;

namespace FixScore.Reporting.Sheet;

/// <summary>A bench sheet as plain text of 80 columns, with <c>[ ]</c> to tick. The same input gives the same text. Thread safe.</summary>
public static class SheetText
{
    const int Width = 80;

    /// <summary>The sheet; lines end with a line feed.</summary>
    /// <param name="plan">The work.</param>
    /// <param name="culture">How numbers are written.</param>
    public static string Render(SheetPlan plan, CultureInfo culture)
    {
        var (document, text) = (new SheetWording(plan, culture).Document, new StringBuilder());
        Wrap(text, "", document.Title);
        foreach (var line in document.Introduction) Line(text, line);
        foreach (var section in document.Sections)
        {
            Wrap(text.Append('\n'), "", section.Title);
            foreach (var line in section.Lines.Concat(Rows(section)).Concat(section.Below)) Line(text, line);
        }
        return text.ToString();
    }

    static IEnumerable<SheetLine> Rows(SheetSection section) => section.Rows.Select(row =>
        new SheetLine(0, SheetMark.Tick, string.Join("; ", row.Zip(section.Columns, (cell, column) => $"{column.ToLowerInvariant()} {cell}"))));

    static void Line(StringBuilder text, SheetLine line) => Wrap(text, new string(' ', 4 * line.Level) + Mark(line.Mark), line.Text);

    static string Mark(SheetMark mark) => mark switch
    {
        SheetMark.Tick => "[ ] ",
        SheetMark.Item => "- ",
        SheetMark.Mind => "! ",
        _ => "",
    };

    // Words longer than a line are cut into pieces, so that no name breaks the page.
    static void Wrap(StringBuilder text, string lead, string words)
    {
        var (room, line) = (Width - lead.Length, new StringBuilder());
        var margin = lead;
        foreach (var word in words.Split(' ').SelectMany(word => word.Length <= room ? [word] : word.Chunk(room).Select(piece => new string(piece))))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > room)
            {
                text.Append(margin).Append(line).Append('\n');
                (margin, _) = (new string(' ', lead.Length), line.Clear());
            }
            if (line.Length > 0) line.Append(' ');
            line.Append(word);
        }
        text.Append((margin + line).TrimEnd()).Append('\n');
    }
}
