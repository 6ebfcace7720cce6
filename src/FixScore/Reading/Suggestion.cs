namespace FixScore;

/// <summary>"Did you mean": the nearest known word, by edit distance. For messages only; no result depends on it. Thread safe.</summary>
public static class Suggestion
{
    // So that a text full of slips in a long record is read in reasonable time.
    const int MostCompared = 2000;
    const int Longest = 64;

    /// <summary>The known word nearest to a wrong one, when it is near enough to be a slip of the keyboard; the first of equals; else <c>null</c>.</summary>
    public static string? For(string wrong, IEnumerable<string> known)
    {
        if (wrong.Length > Longest) return null;
        var lower = wrong.ToLowerInvariant();
        var (nearest, least) = ((string?)null, Math.Max(1, Math.Min(3, (wrong.Length + 1) / 3)) + 1);
        foreach (var word in known.Take(MostCompared))
            if (Math.Abs(word.Length - wrong.Length) < least && Distance(lower, word.ToLowerInvariant(), least) is var distance && distance < least)
                (nearest, least) = (word, distance);
        return nearest;
    }

    /// <summary>A hint: the suggestion, or the whole list when it is short.</summary>
    public static string Hint(string wrong, IReadOnlyCollection<string> known) =>
        For(wrong, known) is { } near ? $"Did you mean '{near}'?" : $"Known here: {string.Join(", ", known)}.";

    // Levenshtein with two rows, given up when no way stays below the limit. Written here because the kernel takes no packages.
    static int Distance(ReadOnlySpan<char> a, ReadOnlySpan<char> b, int limit)
    {
        var same = a.CommonPrefixLength(b);
        a = a[same..];
        b = b[same..];
        Span<int> previous = stackalloc int[b.Length + 1];
        Span<int> current = stackalloc int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++) previous[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            var best = current[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var replace = previous[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                current[j] = Math.Min(replace, Math.Min(previous[j], current[j - 1]) + 1);
                best = Math.Min(best, current[j]);
            }
            if (best >= limit) return limit;
            var done = previous;
            previous = current;
            current = done;
        }
        return previous[b.Length];
    }
}
