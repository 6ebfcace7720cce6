using System.Collections.Immutable;
using System.Globalization;

namespace FixScore.Reporting.Pictures;

/// <summary>How much room text takes, and text made to fit it. No font is asked, so that the bytes are the same everywhere.</summary>
/// <remarks>
/// Letters are taken as wide as those of DejaVu Sans (measured, rounded up), which is wider than most fonts for screens;
/// scripts beyond Latin as wide as they are high or a little more.
/// </remarks>
static class TextRoom
{
    const string Cut = "\u2026";

    // A text element can be piled up from any number of marks; emoji of several people take eleven units.
    const int LongestElement = 16;

    // What stands behind this many units fits nowhere, so that it needs no measuring.
    const int LongestText = 4000;

    /// <summary>Width in hundredths of the font's size.</summary>
    public static int Of(string text) => Elements(text).Sum(OfElement);

    /// <summary>Width in pixels, rounded up.</summary>
    public static int Of(string text, int size) => (Of(text) * size + 99) / 100;

    /// <summary>The text if it fits, else as many text elements as fit and an ellipsis; white space becomes blanks.</summary>
    public static string Fit(string text, int width, int size)
    {
        var elements = Elements(text).ToList();
        if (elements.Sum(OfElement) * size <= width * 100) return string.Concat(elements);
        var (room, kept) = (width * 100 / size - OfLetter(Cut[0]), 0);
        while (kept < elements.Count && OfElement(elements[kept]) <= room) room -= OfElement(elements[kept++]);
        return string.Concat(elements.Take(kept)).TrimEnd() + Cut;
    }

    /// <summary>Lines no wider than the room; words that are wider are cut.</summary>
    public static ImmutableArray<string> Wrap(string text, int width, int size)
    {
        var (lines, line) = (ImmutableArray.CreateBuilder<string>(), "");
        foreach (var word in string.Concat(Elements(text)).Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => Fit(word, width, size)))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (Of(longer, size) <= width)
            {
                line = longer;
                continue;
            }
            lines.Add(line);
            line = word;
        }
        if (line.Length > 0) lines.Add(line);
        return lines.ToImmutable();
    }

    static IEnumerable<string> Elements(string text)
    {
        var elements = StringInfo.GetTextElementEnumerator(text.Length <= LongestText ? text : text[..LongestText] + Cut);
        while (elements.MoveNext()) yield return Tame(elements.GetTextElement());
    }

    // Halves of pairs and code points that are no characters may not stand in XML 1.0.
    static string Tame(string element) => element switch
    {
        { Length: > LongestElement } => "\uFFFD",
        [var only] when char.IsWhiteSpace(only) || char.IsControl(only) => " ",
        _ when element is "\r\n" => " ",
        _ when element.EnumerateRunes().Any(rune => rune.Value is 0xFFFE or 0xFFFF) || HasHalf(element) => "\uFFFD",
        _ => element,
    };

    static bool HasHalf(string element) => element.Where((letter, at) => char.IsSurrogate(letter)
        && !(char.IsHighSurrogate(letter) && at + 1 < element.Length && char.IsLowSurrogate(element[at + 1]))
        && !(char.IsLowSurrogate(letter) && at > 0 && char.IsHighSurrogate(element[at - 1]))).Any();

    static int OfElement(string element) => element.Length == 1 ? OfLetter(element[0]) : char.IsHighSurrogate(element[0]) ? 160 : OfLetter(element[0]) * Math.Min(element.EnumerateRunes().Count(rune => !IsMark(rune)), 4);

    static bool IsMark(System.Text.Rune rune) => System.Text.Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format;

    static int OfLetter(char letter) => letter switch
    {
        'i' or 'j' or 'l' or '\'' or '.' or ',' or ' ' or '|' => 34,
        'f' or 't' or 'r' or '(' or ')' or ':' or ';' or '-' or '/' or '"' or '!' or 'I' or 'J' => 46,
        'm' or 'w' or 'M' or 'W' or '@' or '%' or '&' or '\u2026' => 102,
        >= 'a' and <= 'z' or >= '0' and <= '9' => 64,
        < '\u0250' => 84,
        '\u2E3A' or '\u2E3B' or '\u102A' or >= '\uFDF0' and <= '\uFDFD' or >= '\uA9C0' and <= '\uA9CF' => 700,
        _ => 106,
    };
}
