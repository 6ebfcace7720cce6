namespace FixScore.Cli.Terminal;

/// <summary>Makes text of records fit for a terminal: no control characters, no directional overrides.</summary>
static class Plain
{
    public static string Text(string text) =>
        text.Any(IsUnwanted) ? string.Concat(text.Select(letter => IsUnwanted(letter) ? '\uFFFD' : letter)) : text;

    /// <summary>The same, cut where it is long.</summary>
    public static string Text(string text, int longest) => Text(text.Length > longest ? text[..(longest - 3)] + "..." : text);

    static bool IsUnwanted(char letter) =>
        char.IsControl(letter) || letter is >= '\u202A' and <= '\u202E' or >= '\u2066' and <= '\u2069' or '\u200E' or '\u200F';
}
