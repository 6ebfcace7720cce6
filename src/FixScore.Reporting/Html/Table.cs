namespace FixScore.Reporting.Html;

/// <summary>A table of which one column, the first unless given, names the rows. A column's class comes with its title.</summary>
/// <remarks>Each cell carries its column's title for narrow windows, where a row becomes a block.</remarks>
static class Table
{
    public static Markup Of(string caption, IReadOnlyList<(string Title, string Class)> columns, IEnumerable<IReadOnlyList<Markup>> rows, int naming = 0) =>
        Markup.Classed("div", "scroll", [Markup.Element("table", [
            caption.Length > 0 ? Markup.Element("caption", [caption]) : Markup.Nothing,
            Markup.Element("thead", [Markup.Element("tr", [.. columns.Select(column => Markup.Element("th", [("scope", "col"), ("class", column.Class)], [column.Title]))])]),
            Markup.Element("tbody", [.. rows.Select(row => Markup.Element("tr", [.. row.Select((cell, index) => index == naming
                ? Markup.Element("th", [("scope", "row"), ("class", columns[index].Class)], [cell])
                : Markup.Element("td", [("class", columns[index].Class), ("data-column", columns[index].Title)], [cell]))]))])])]);
}
