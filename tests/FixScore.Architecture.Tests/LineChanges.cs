using System.Text;

namespace FixScore.Architecture.Tests;

/// <summary>Which lines one text has lost and another gained, each group under the line of the type it stands in.</summary>
static class LineChanges
{
    /// <summary>Lines with - are gone, those with + are new. Empty when the texts are equal.</summary>
    public static string Between(string old, string now)
    {
        var (before, after) = (old.Split('\n'), now.Split('\n'));
        var (kept, text, type, told) = (Kept(before, after), new StringBuilder(), "", "");
        for (int i = 0, j = 0; i < before.Length || j < after.Length;)
        {
            if (i < before.Length && j < after.Length && before[i] == after[j])
            {
                type = TypeIn(after[j]) ?? type;
                (i, j) = (i + 1, j + 1);
                continue;
            }
            if (type != told) text.Append(told = type).Append('\n');
            var gone = j == after.Length || (i < before.Length && kept[i + 1, j] >= kept[i, j + 1]);
            text.Append(gone ? "- " : "+ ").Append((gone ? before[i++] : after[j++]).Trim()).Append('\n');
        }
        return text.ToString();
    }

    /// <summary>Length of the longest common subsequence of the lines from two places on.</summary>
    static int[,] Kept(string[] before, string[] after)
    {
        var kept = new int[before.Length + 1, after.Length + 1];
        for (var i = before.Length - 1; i >= 0; i--)
            for (var j = after.Length - 1; j >= 0; j--)
                kept[i, j] = before[i] == after[j] ? kept[i + 1, j + 1] + 1 : Math.Max(kept[i + 1, j], kept[i, j + 1]);
        return kept;
    }

    // A type stands in its namespace, four spaces in; its attributes and braces do as well.
    static string? TypeIn(string line) => line.StartsWith("    public ", StringComparison.Ordinal) ? line.Trim() : null;
}
