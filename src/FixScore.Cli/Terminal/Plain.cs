using System.Text;
using System.Text.RegularExpressions;

namespace FixScore.Cli.Terminal;

/// <summary>Makes text of records fit for a terminal: nothing that moves the cursor, breaks lines or turns the reading direction around.</summary>
static partial class Plain
{
    const string Cut = "...";

    public static string Text(string text) =>
        text.Any(IsUnwanted) ? string.Concat(text.Select(letter => IsUnwanted(letter) ? '\uFFFD' : letter)) : text;

    /// <summary>The same, cut where it is long.</summary>
    public static string Text(string text, int longest) => Text(text.Length > longest ? text[..WholeLetters(text, longest - Cut.Length)] + Cut : text);

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

    static int WholeLetters(string text, int length) => char.IsHighSurrogate(text[length - 1]) ? length - 1 : length;

    // Control characters; line and paragraph separators; marks, embeddings, overrides and isolates of the bidirectional algorithm (UAX 9).
    static bool IsUnwanted(char letter) =>
        char.IsControl(letter) || letter is '\u2028' or '\u2029' or '\u061C' or '\u200E' or '\u200F' or >= '\u202A' and <= '\u202E' or >= '\u2066' and <= '\u2069';

    // Up to a hyphen or blank, it included.
    [GeneratedRegex("[^- ]*[- ]|[^- ]+")]
    private static partial Regex Pieces();
}
