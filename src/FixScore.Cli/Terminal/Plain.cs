using System.Text;
using System.Text.RegularExpressions;
using FixScore.Reporting;

namespace FixScore.Cli.Terminal;

/// <summary>Makes text of records fit for a terminal: nothing that moves the cursor, breaks lines or turns the reading direction around.</summary>
static partial class Plain
{
    public static string Text(string text) => PlainText.Of(text);

    /// <summary>The same, cut where it is long.</summary>
    public static string Text(string text, int longest) => PlainText.Of(text, longest);

    /// <summary>The same with line breaks after hyphens, where a compound is longer than <paramref name="longest"/>.</summary>
    public static string Folded(string text, int longest)
    {
        var (folded, line) = (new StringBuilder(text.Length), 0);
        foreach (var piece in Pieces().EnumerateMatches(text))
        {
            if (line > 0 && line + piece.Length > longest && folded[^1] == '-') (line, _) = (0, folded.Append('\n'));
            folded.Append(text.AsSpan(piece.Index, piece.Length));
            line = folded[^1] == ' ' ? 0 : line + piece.Length;
        }
        return folded.ToString();
    }

    // Up to a hyphen or blank, it included.
    [GeneratedRegex("[^- ]*[- ]|[^- ]+")]
    private static partial Regex Pieces();
}
