using System.Globalization;
using System.Text;

namespace FixScore.Reporting.Cards;

/// <summary>Text of a record made fit for one line of a picture.</summary>
static class Letters
{
    const int MostMarks = 2;
    const char Blank = '\uFFFD';

    /// <summary>The text with white space as single spaces; controls, overrides of direction, halves of letters and letters of boundless width become a blank sign, marks beyond two on a letter are left out.</summary>
    public static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        var marks = 0;
        foreach (var letter in text.EnumerateRunes())
        {
            marks = IsMark(letter) ? marks + 1 : 0;
            if (Rune.IsWhiteSpace(letter)) Space(clean);
            else if (IsUnwanted(letter)) clean.Append(Blank);
            else if (marks <= MostMarks) clean.Append(letter.ToString());
        }
        return clean.ToString().Trim(' ');
    }

    static void Space(StringBuilder clean)
    {
        if (clean.Length > 0 && clean[^1] != ' ') clean.Append(' ');
    }

    static bool IsMark(Rune letter) => Rune.GetUnicodeCategory(letter) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark;

    // Dashes of two and three letters, whole phrases as one letter, and cuneiform have no width that a table could bound.
    static bool IsUnwanted(Rune letter) => Rune.IsControl(letter)
        || letter.Value is 0x061C or 0x200B or 0x200E or 0x200F or >= 0x202A and <= 0x202E or >= 0x2060 and <= 0x206F
            or 0x2E3A or 0x2E3B or >= 0xFDF0 and <= 0xFDFF or 0xFEFF or >= 0x12000 and <= 0x1254F or >= 0xE0000 and <= 0xE0FFF
        || (letter.Value & 0xFFFE) == 0xFFFE;
}
