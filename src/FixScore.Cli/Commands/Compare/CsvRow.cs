using System.Text;
using nietras.SeparatedValues;

namespace FixScore.Cli.Commands.Compare;

/// <summary>A row of a file of comma separated values.</summary>
/// <param name="Line">The line it begins on, from 1.</param>
/// <param name="Cells">Its cells, without blanks around them.</param>
sealed record CsvRow(int Line, string[] Cells)
{
    public static CsvRow[] Of(ReadOnlyMemory<byte> utf8)
    {
        var text = Encoding.UTF8.GetString(utf8.Span);
        if (string.IsNullOrWhiteSpace(text)) return [];
        using var reader = Sep.New(',').Reader(options => options with
        {
            HasHeader = false, Unescape = true, Trim = SepTrim.Outer, DisableColCountCheck = true,
        }).FromText(text);
        var rows = new List<CsvRow>();
        foreach (var row in reader)
            if (!row.Span.Trim().IsEmpty) rows.Add(new(row.LineNumberFrom, row[..].ToStringsArray()));
        return [.. rows];
    }
}
