using System.Collections.Immutable;
using System.Globalization;

namespace FixScore.Reporting.Cards;

/// <summary>Text in lines of a width: wrapped at spaces, else within words, and cut with an ellipsis after the last line there is room for.</summary>
readonly record struct Paragraph(ImmutableArray<string> Lines, int Size)
{
    const char Ellipsis = '\u2026';

    /// <summary>The text in the first of some sizes in which it needs no cut; cut in the last.</summary>
    public static Paragraph Fit(string text, Face face, int width, int most, params ReadOnlySpan<int> sizes)
    {
        var clean = Letters.Clean(text);
        foreach (var size in sizes)
            if (Wrap(clean, face, size, width, most) is { IsDefault: false } lines) return new(lines, size);
        return new(Cut(clean, face, sizes[^1], width, most), sizes[^1]);
    }

    /// <summary>The text on one line, cut where it is too long.</summary>
    public static string OneLine(string text, Face face, int size, int width) => Fit(text, face, width, 1, size).Lines.FirstOrDefault("");

    // Default when the text needs more lines, or a word is wider than a line.
    static ImmutableArray<string> Wrap(string text, Face face, int size, int width, int most)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        foreach (var word in text.Split(' '))
        {
            if (Advances.Of(word, face, size) > width) return default;
            if (lines.Count > 0 && Advances.Of($"{lines[^1]} {word}", face, size) <= width) lines[^1] += " " + word;
            else if (lines.Count < most) lines.Add(word);
            else return default;
        }
        return lines.ToImmutable();
    }

    static ImmutableArray<string> Cut(string text, Face face, int size, int width, int most)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var rest = text;
        while (rest.Length > 0 && lines.Count < most)
        {
            var isLast = lines.Count + 1 == most;
            var length = Most(rest, face, size, isLast ? width - Advances.Of($"{Ellipsis}", face, size) : width);
            if (length < rest.Length && !isLast && rest.LastIndexOf(' ', length) is > 0 and var space) length = space;
            lines.Add(rest[..length].TrimEnd() + (isLast && length < rest.Length ? Ellipsis : ""));
            rest = rest[length..].TrimStart();
        }
        return lines.ToImmutable();
    }

    // How many letters have room, never half of what is one letter to a reader; one at least, so that each line takes something.
    static int Most(string text, Face face, int size, int width)
    {
        var (length, used) = (0, 0);
        while (length < text.Length)
        {
            var next = StringInfo.GetNextTextElementLength(text, length);
            used += Advances.Of(text.Substring(length, next), face, size);
            if (used > width) break;
            length += next;
        }
        return length;
    }
}
