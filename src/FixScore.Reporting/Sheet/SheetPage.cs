using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using FixScore.Reporting.Html;

namespace FixScore.Reporting.Sheet;

/// <summary>A bench sheet as one self-contained page to print on A4: no script, no network.</summary>
/// <remarks>The same input gives the same bytes. Text of records is escaped. Thread safe.</remarks>
public static class SheetPage
{
    // The joint names a row, after the box to tick and the operation.
    const int Naming = 2;

    /// <summary>The page as UTF-8.</summary>
    /// <param name="plan">The work.</param>
    /// <param name="culture">How numbers are written.</param>
    public static byte[] Render(SheetPlan plan, CultureInfo culture)
    {
        var document = new SheetWording(plan, culture).Document;
        var main = Markup.Element("main", [
            Markup.Element("header", [Markup.Element("h1", [document.Title]), Lines(document.Introduction)]),
            .. document.Sections.Select(Section)]);
        return Encoding.UTF8.GetBytes(HtmlPage.Of(document.Title, [HtmlPage.Style("sheet.css")], main));
    }

    static Markup Section(SheetSection section) => Markup.Element("section", [
        Markup.Element("h2", [section.Title]), Lines(section.Lines), Screws(section), Lines(section.Below)]);

    static Markup Lines(ImmutableArray<SheetLine> lines) => lines.IsEmpty ? Markup.Nothing : Markup.Element("ul", lines.Select(Line));

    static Markup Line(SheetLine line) => Markup.Classed("li", $"{line.Mark.ToString().ToLowerInvariant()} level-{(line.Level == 0 ? "0" : "1")}", [Mark(line.Mark), line.Text]);

    static Markup Mark(SheetMark mark) => mark == SheetMark.Mind ? Markup.Element("strong", ["Caution: "]) : Markup.Nothing;

    static Markup Screws(SheetSection section) => section.Columns.IsEmpty ? Markup.Nothing
        : Table.Of("", [("Done", "tick"), .. section.Columns.Select(column => (column, ""))], section.Rows.Select(row => (IReadOnlyList<Markup>)[Markup.Nothing, .. row.Select(cell => (Markup)cell)]), Naming);
}
