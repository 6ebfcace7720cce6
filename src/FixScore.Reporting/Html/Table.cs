namespace FixScore.Reporting.Html;

/// <summary>A table whose first column names its rows. A column's class comes with its title.</summary>
static class Table
{
    public static Markup Of(string caption, IReadOnlyList<(string Title, string Class)> columns, IEnumerable<IReadOnlyList<Markup>> rows) =>
        Markup.Classed("div", "scroll", [Markup.Element("table", [
            caption.Length > 0 ? Markup.Element("caption", [caption]) : Markup.Nothing,
            Markup.Element("thead", [Markup.Element("tr", [.. columns.Select(column => Markup.Element("th", [("scope", "col"), ("class", column.Class)], [column.Title]))])]),
            Markup.Element("tbody", [.. rows.Select(row => Markup.Element("tr", [.. row.Select((cell, index) => index == 0
                ? Markup.Element("th", [("scope", "row"), ("class", columns[0].Class)], [cell])
                : Markup.Classed("td", columns[index].Class, [cell]))]))])])]);
}
