namespace FixScore.Settings;

/// <summary>"Did you mean" for settings.</summary>
static class Nearest
{
    public static string Hint(string wrong, IReadOnlyList<string> known)
    {
        var near = known.Select(word => (Word: word, Distance: Distance(wrong.ToLowerInvariant(), word.ToLowerInvariant())))
            .Where(each => each.Distance <= Math.Max(2, wrong.Length / 3)).ToArray();
        return near.Length == 0 ? $"Known here: {string.Join(", ", known)}." : $"Did you mean '{near.MinBy(each => each.Distance).Word}'?";
    }

    // Levenshtein, one row. Source: Levenshtein (1966), Soviet Physics Doklady 10(8), 707-710.
    static int Distance(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 0; i < a.Length; i++)
        {
            var (diagonal, _) = (row[0], row[0] = i + 1);
            for (var j = 0; j < b.Length; j++)
                (diagonal, row[j + 1]) = (row[j + 1], Math.Min(diagonal + (a[i] == b[j] ? 0 : 1), Math.Min(row[j], row[j + 1]) + 1));
        }
        return row[b.Length];
    }
}
