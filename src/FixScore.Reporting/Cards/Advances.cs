using System.Text;

namespace FixScore.Reporting.Cards;

/// <summary>How much room text takes, whatever common font draws it: no font is asked, so that the bytes are the same everywhere.</summary>
/// <remarks>
/// Source: the widest advance of each letter, in hundredths of its size and rounded up, among DejaVu 2.37, Liberation 2.1, Open Sans 1.10 and Caladea 1.001
/// (as packaged by Debian 12), read from their tables <c>hmtx</c>. Beyond ASCII it is the widest of the whole block.
/// </remarks>
static class Advances
{
    const int First = ' ';
    const int Hundred = 100;

    static ReadOnlySpan<byte> Plain =>
    [
        32, 41, 46, 84, 64, 96, 78, 28, 40, 40, 56, 84, 32, 37, 32, 37, 64, 64, 64, 64, 64, 64, 64, 64, 64, 64, 34, 34, 84, 84, 84, 56,
        102, 69, 69, 73, 78, 67, 62, 78, 76, 30, 50, 67, 56, 91, 76, 79, 67, 79, 73, 67, 62, 74, 69, 99, 69, 67, 69, 40, 37, 40, 84, 56,
        58, 62, 64, 55, 64, 62, 36, 64, 64, 28, 28, 58, 28, 98, 64, 62, 64, 64, 42, 53, 40, 64, 60, 82, 60, 60, 53, 64, 56, 64, 84,
    ];

    static ReadOnlySpan<byte> Serif =>
    [
        32, 41, 46, 84, 64, 96, 90, 28, 40, 40, 50, 84, 32, 34, 32, 49, 64, 64, 64, 64, 64, 64, 64, 64, 64, 64, 34, 34, 84, 84, 84, 54,
        100, 73, 74, 77, 81, 73, 70, 80, 88, 40, 41, 75, 67, 103, 88, 82, 68, 82, 76, 69, 67, 85, 73, 103, 73, 73, 70, 40, 49, 40, 84, 50,
        50, 60, 65, 57, 65, 60, 38, 65, 65, 32, 32, 61, 32, 95, 65, 61, 65, 65, 48, 52, 41, 65, 57, 86, 57, 57, 53, 64, 34, 64, 84,
    ];

    static ReadOnlySpan<byte> Heading =>
    [
        35, 44, 56, 84, 70, 100, 91, 31, 48, 48, 53, 84, 35, 42, 35, 51, 70, 70, 70, 70, 70, 70, 70, 70, 70, 70, 37, 37, 84, 84, 84, 59,
        100, 78, 85, 80, 87, 77, 71, 86, 95, 47, 50, 87, 71, 111, 92, 88, 76, 88, 84, 73, 75, 88, 78, 113, 78, 73, 73, 48, 51, 48, 84, 50,
        50, 65, 70, 61, 70, 64, 44, 70, 73, 38, 37, 70, 38, 106, 73, 67, 70, 70, 53, 57, 47, 73, 59, 87, 60, 59, 57, 65, 37, 65, 84,
    ];

    /// <summary>Room for a text in pixels, rounded up.</summary>
    public static int Of(string text, Face face, int size)
    {
        var table = face switch { Face.Plain => Plain, Face.Serif => Serif, _ => Heading };
        long hundredths = 0;
        foreach (var letter in text.EnumerateRunes())
            hundredths += letter.Value - First is var at && at >= 0 && at < table.Length ? table[at] : Beyond(letter.Value);
        return (int)Math.Min(int.MaxValue / 2, (hundredths * size + Hundred - 1) / Hundred);
    }

    // Quotes, dashes, the dot between and accented letters are common in names; the rest gets room for a full-width letter or an emoji.
    static int Beyond(int letter) => letter switch
    {
        0x00B7 or >= 0x2018 and <= 0x201F => 58,
        0x2013 => 56,
        0x2026 => 100,
        >= 0x00E0 and <= 0x00FF and not 0x00E6 => 74,
        < 0x0100 => 105,
        < 0x0180 => 119,
        _ => 165,
    };
}
