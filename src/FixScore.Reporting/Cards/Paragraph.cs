using System.Collections.Immutable;
using System.Globalization;

namespace FixScore.Reporting.Cards;

/// <summary>Text in lines of a width: wrapped at spaces, else within words, and cut with an ellipsis after the last line there is room for.</summary>
readonly record struct Paragraph(ImmutableArray<string> Lines, int Size)
{
    const char Ellipsis = '\u2026';

    /// <summary>The text in the first of some settings in which it needs no cut; cut in the last.</summary>
    public static Paragraph Fit(string text, Face face, int width, params ReadOnlySpan<Setting> settings)
    {
        var clean = Letters.Clean(text);
        foreach (var (size, most) in settings)
            if (Wrap(clean, face, size, width, most) is { IsDefault: false } lines) return new(Even(clean, face, size, width, lines), size);
        return new(Cut(clean, face, settings[^1].Size, width, settings[^1].Lines), settings[^1].Size);
    }

    /// <summary>The text on one line, cut where it is too long.</summary>
    public static string OneLine(string text, Face face, int size, int width) => Fit(text, face, width, new Setting(size)).Lines.FirstOrDefault("");

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

    // As narrow as it gets in no more lines, so that no word is left alone on the last.
    static ImmutableArray<string> Even(string text, Face face, int size, int width, ImmutableArray<string> lines)
    {
        if (lines.Length < 2) return lines;
        for (var narrower = width - size / 2; Wrap(text, face, size, narrower, lines.Length) is { IsDefault: false } even; narrower -= size / 2) lines = even;
        return lines;
    }

    static ImmutableArray<string> Cut(string text, Face face, int size, int width, int most)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var rest = text;
        while (rest.Length > 0 && lines.Count < most)
        {
            var isLast = lines.Count + 1 == most;
            var length = Most(rest, face, size, isLast ? width - Advances.Of($"{Ellipsis}", face, size) : width);
            if (length < rest.Length && rest.LastIndexOf(' ', length) is var space && space > (isLast ? length * 3 / 4 : 0)) length = space;
            lines.Add(rest[..length].TrimEnd(' ', ',', ';', ':') + (isLast && length < rest.Length ? Ellipsis : ""));
            rest = rest[length..].TrimStart();
        }
        return lines.ToImmutable();
    }

    // How many letters have room, never half of what is one letter to a reader.
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
