namespace FixScore.Cli.Terminal;

/// <summary>"Did you mean" for words of the command line.</summary>
static class Suggestions
{
    /// <summary>The known word that differs least, when it differs by two letters at most.</summary>
    public static string? Nearest(string wrong, IEnumerable<string> known)
    {
        if (wrong.Length > 40) return null;
        var near = known.Select(word => (Word: word, Distance: Distance(wrong, word))).Where(pair => pair.Distance <= 2).ToArray();
        return near.Length == 0 ? null : near.MinBy(pair => pair.Distance).Word;
    }

    // Levenshtein, the short recursive way: command words are short.
    static int Distance(ReadOnlySpan<char> a, ReadOnlySpan<char> b, int limit = 3)
    {
        if (limit < 0) return 1;
        if (a.IsEmpty || b.IsEmpty) return a.Length + b.Length;
        if (a[0] == b[0]) return Distance(a[1..], b[1..], limit);
        return 1 + Math.Min(Distance(a[1..], b[1..], limit - 1), Math.Min(Distance(a[1..], b, limit - 1), Distance(a, b[1..], limit - 1)));
    }
}
