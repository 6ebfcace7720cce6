namespace FixScore.Reading;

/// <summary>"Did you mean": the nearest known word, by edit distance.</summary>
static class Suggestion
{
    // So that a text full of slips in a long record is read in reasonable time.
    const int MostCompared = 2000;

    /// <summary>The known word nearest to a wrong one, when it is near enough to be a slip of the keyboard; the first of equals.</summary>
    public static string? For(string wrong, IEnumerable<string> known)
    {
        if (wrong.Length > 64) return null;
        var limit = Math.Max(1, Math.Min(3, wrong.Length / 3));
        var nearest = known.Take(MostCompared).Select(word => (Word: word, Distance: Distance(wrong, word))).Where(pair => pair.Distance <= limit).ToArray();
        return nearest.Length == 0 ? null : nearest.MinBy(pair => pair.Distance).Word;
    }

    /// <summary>A hint: the suggestion, or the whole list when it is short.</summary>
    public static string Hint(string wrong, IReadOnlyCollection<string> known) =>
        For(wrong, known) is { } near ? $"Did you mean '{near}'?" : $"Known here: {string.Join(", ", known)}.";

    // Levenshtein with two rows, letters compared without case. Written here because the kernel takes no packages.
    static int Distance(string a, string b)
    {
        var previous = Enumerable.Range(0, b.Length + 1).ToArray();
        var current = new int[b.Length + 1];
        for (var i = 1; i <= a.Length; i++)
        {
            current[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var replace = previous[j - 1] + (char.ToLowerInvariant(a[i - 1]) == char.ToLowerInvariant(b[j - 1]) ? 0 : 1);
                current[j] = Math.Min(replace, Math.Min(previous[j], current[j - 1]) + 1);
            }
            (previous, current) = (current, previous);
        }
        return previous[b.Length];
    }
}
