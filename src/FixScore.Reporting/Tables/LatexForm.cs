using System.Collections.Immutable;
using System.Text;

namespace FixScore.Reporting.Tables;

/// <summary>Writes tables as LaTeX with rules of the package booktabs; numbers rounded half-even to four decimals, empty cells as a dash.</summary>
public static class LatexForm
{
    /// <summary>A floating table with caption and label <c>tab:name</c>; UTF-8, lines end with a line feed.</summary>
    public static byte[] Of(ResultTable table)
    {
        var text = new StringBuilder()
            .Append("% needs \\usepackage{booktabs}\n\\begin{table}\n\\centering\n\\caption{").Append(Escaped(table.Title)).Append("}\n\\label{tab:").Append(table.Name).Append("}\n")
            .Append("\\begin{tabular}{").Append(string.Concat(table.Columns.Select(column => column.Kind == ColumnKind.Text ? 'l' : 'r'))).Append("}\n\\toprule\n")
            .Append(Line(table.Columns.Select(column => Escaped(column.Name)))).Append("\\midrule\n");
        foreach (var row in table.Rows) text.Append(Line(row.Select(Text)));
        return Encoding.UTF8.GetBytes(text.Append("\\bottomrule\n\\end{tabular}\n\\end{table}\n").ToString());
    }

    static string Line(IEnumerable<string> cells) => string.Join(" & ", cells) + " \\\\\n";

    static string Text(Cell cell) => cell switch
    {
        { Number: { } number } => CsvForm.Text(decimal.Round(number, 4)),
        { Text: { Length: > 0 } text } => Escaped(text),
        _ => "--",
    };

    // Source: L. Lamport, LaTeX, 2nd edition 1994, section 2.2.4, the ten special characters (from memory).
    static string Escaped(string text) => string.Concat(text.Select(letter => letter switch
    {
        '\\' => "\\textbackslash{}",
        '~' => "\\textasciitilde{}",
        '^' => "\\textasciicircum{}",
        '#' or '$' or '%' or '&' or '_' or '{' or '}' => "\\" + letter,
        < ' ' => " ",
        _ => letter.ToString(),
    }));
}
