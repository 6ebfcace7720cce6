using System.Globalization;
using System.Text;
using nietras.SeparatedValues;

namespace FixScore.Reporting.Tables;

/// <summary>Writes tables as comma separated values (RFC 4180): UTF-8, a line of names, exact numbers, empty where nothing is known.</summary>
public static class CsvForm
{
    static readonly SepWriterOptions Options = Sep.New(',').Writer(options => options with { CultureInfo = CultureInfo.InvariantCulture, Escape = true });

    /// <summary>A table as bytes; lines end with a line feed everywhere.</summary>
    public static byte[] Of(ResultTable table)
    {
        var text = new StringBuilder();
        using (var writer = Options.To(text))
        {
            foreach (var row in table.Rows)
            {
                using var line = writer.NewRow();
                for (var i = 0; i < table.Columns.Length; i++) line[table.Columns[i].Name].Set(Text(row[i]));
            }
            if (table.Rows.IsEmpty) writer.Header.Add([.. table.Columns.Select(column => column.Name)]);
        }
        return Encoding.UTF8.GetBytes(text.ToString().ReplaceLineEndings("\n"));
    }

    // Dividing by a one with all decimals drops trailing zeros: 60.0 is 60.
    internal static string Text(Cell cell) =>
        cell.Number is { } number ? (number / 1.0000000000000000000000000000m).ToString(CultureInfo.InvariantCulture) : cell.Text ?? "";
}
