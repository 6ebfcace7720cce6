namespace FixScore.Reporting;

/// <summary>Text of records, fit for a line: nothing that moves a cursor, breaks a line or turns the reading direction of what stands around it.</summary>
public static class PlainText
{
    const string Mark = "...";

    /// <summary>The text, each unwanted character replaced by U+FFFD. Thread safe.</summary>
    /// <param name="text">Text of a record, which may hold anything.</param>
    public static string Of(string text) =>
        text.Any(IsUnwanted) ? string.Concat(text.Select(letter => IsUnwanted(letter) ? '\uFFFD' : letter)) : text;

    /// <summary>The same, cut where it is long, never within a surrogate pair. Thread safe.</summary>
    /// <param name="text">Text of a record.</param>
    /// <param name="longest">The most characters, the three dots of a cut included; 5 at least.</param>
    public static string Of(string text, int longest) => Of(text.Length <= longest ? text : text[..WholeLetters(text, longest - Mark.Length)] + Mark);

    static int WholeLetters(string text, int length) => char.IsHighSurrogate(text[length - 1]) ? length - 1 : length;

    // Control characters (ECMA-48); line and paragraph separators; marks, embeddings, overrides and isolates of UAX 9.
    static bool IsUnwanted(char letter) =>
        char.IsControl(letter) || letter is '\u2028' or '\u2029' or '\u061C' or '\u200E' or '\u200F' or >= '\u202A' and <= '\u202E' or >= '\u2066' and <= '\u2069';
}
