using System.Collections.Immutable;
using System.Globalization;
using FixScore.Reporting.Html;

namespace FixScore.Reporting.Blocks;

/// <summary>Blocks as HTML. Everything is shown without a script; what is folded opens by itself on paper.</summary>
static class HtmlForm
{
    const int DeepestHeading = 6;
    const int DeepestRow = 4;

    /// <summary>The blocks, headings from a level on.</summary>
    public static Markup Of(IEnumerable<Block> blocks, int level = 2) => Markup.Join(blocks.Select(block => Of(block, level)));

    static Markup Of(Block block, int level) => block switch
    {
        Section section => Of(section, level),
        Prose prose => Markup.Element("p", Attributes(prose.Tone == Tone.Plain ? "" : Word.Of(prose.Tone)), [Lead(prose.Tone), prose.Text]),
        Items items => Of(items),
        Grid grid => Of(grid),
        Picture picture => Of(picture),
        Verbatim verbatim => Markup.Element("pre", [("tabindex", "0"), ("role", "group"), ("aria-label", "To copy")], [verbatim.Text]),
        Attachments attachments => Of(attachments),
        _ => throw new ArgumentException($"No form for {block.GetType().Name}.", nameof(block)),
    };

    static Markup Of(Section section, int level)
    {
        var heading = Markup.Element($"h{Text(Math.Min(level, DeepestHeading))}", [section.Title]);
        var content = Of(section.Blocks, level + 1);
        (string, string)[] anchor = section.Anchor.Length > 0 ? [("id", section.Anchor)] : [];
        return section.IsFolded
            ? Markup.Element("details", anchor, [Markup.Element("summary", [heading, Gist(section)]), content])
            : Markup.Element("section", [.. anchor, ("class", $"level-{Text(level)}")], [heading, Gist(section), content]);
    }

    static Markup Gist(Section section) => section.Gist.Length > 0 ? Markup.Classed("span", "gist", [section.Gist]) : Markup.Nothing;

    // The tone in a word, for those who do not see colours.
    static Markup Lead(Tone tone) => tone switch
    {
        Tone.Mind => Markup.Element("strong", ["Mind: "]),
        Tone.Open => Markup.Element("strong", ["Not known: "]),
        _ => Markup.Nothing,
    };

    static Markup Of(Items items) => items.Entries.IsEmpty ? Markup.Nothing
        : Markup.Element("ul", [.. items.Entries.Select(item => Markup.Element("li", Attributes(Class(item)), [Label(item), item.Text]))]);

    // What is usual needs no class: a page has thousands of items and cells.
    static string Class(Item item) => string.Join(' ', [.. item.Tone == Tone.Plain ? (string[])[] : [Word.Of(item.Tone)], .. item.Level == 0 ? (string[])[] : [$"deep-{Text(item.Level)}"]]);

    static (string, string)[] Attributes(string cssClass, params (string, string)[] others) => cssClass.Length > 0 ? [.. others, ("class", cssClass)] : others;

    static Markup Label(Item item) => item.Label.Length > 0 ? Markup.Element("b", [$"{item.Label}: "]) : Lead(item.Tone);

    static Markup Of(Grid grid) => grid.Rows.IsEmpty ? Markup.Nothing
        : Markup.Element("div", [("class", "scroll"), ("tabindex", "0"), ("role", "group"), ("aria-label", grid.Caption)], [Markup.Element("table", [
            Markup.Element("caption", [grid.Caption]),
            Markup.Element("thead", [Markup.Element("tr", [.. grid.Columns.Select(Head)])]),
            Markup.Element("tbody", [.. grid.Rows.Select(row => Markup.Element("tr", [.. row.Select((cell, index) => Of(cell, grid.Columns[index], isFirst: index == 0))]))])])]);

    static Markup Head(GridColumn column) => column.Title.Length == 0
        ? Markup.Element("td", Attributes(Class(column)), [""])
        : Markup.Element("th", Attributes(Class(column), ("scope", "col")), [column.Title]);

    static string Class(GridColumn column) => $"{(column.Kind == GridKind.Text ? "" : Word.Of(column.Kind))}{(column.IsExtra ? " extra" : "")}".Trim();

    static Markup Of(GridCell cell, GridColumn column, bool isFirst)
    {
        Markup content = column.Kind == GridKind.Code ? Markup.Element("code", [cell.Text]) : cell.Text;
        if (column.Kind is GridKind.Bar or GridKind.Span) content = Drawn(cell.Extent, column.Kind);
        return isFirst
            ? Markup.Element("th", Attributes(cell.Depth == 0 ? "" : $"depth-{Text(Math.Min(cell.Depth, DeepestRow))}", ("scope", "row")), [content])
            : Markup.Element("td", Attributes(Class(column)), [content]);
    }

    static Markup Drawn(Extent? extent, GridKind kind) => extent is not { } drawn ? Markup.Nothing
        : kind == GridKind.Bar ? SmallBar.Of(drawn) : SpanBar.Of(drawn);

    static Markup Of(Picture picture) => Markup.Element("figure", [
        Markup.Element("div", picture.IsWide ? [("class", "scroll"), ("tabindex", "0"), ("role", "group"), ("aria-label", picture.InWords)] : [], [picture.Svg]),
        picture.Caption.Length > 0 ? Markup.Element("figcaption", [picture.Caption]) : Markup.Nothing]);

    // Saved from the page itself, so that the page needs no folder beside it.
    static Markup Of(Attachments attachments) => Markup.Join(Markup.Element("p", [attachments.Caption]), Markup.List(attachments.Files.Select(file =>
        Markup.Element("a", [("download", file.Name), ("href", $"data:application/json;base64,{Convert.ToBase64String(file.Json)}")], [file.Name]))));

    static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
