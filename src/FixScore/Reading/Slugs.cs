using System.Globalization;

namespace FixScore.Reading;

/// <summary>Ids: lower-case letters and digits, groups joined by one <c>-</c> or <c>.</c>.</summary>
static class Slugs
{
    public static bool IsSlug(string text)
    {
        var afterJoin = true;
        foreach (var letter in text)
        {
            var join = letter is '-' or '.';
            if (join && afterJoin || !join && !char.IsAsciiDigit(letter) && !char.IsAsciiLetterLower(letter)) return false;
            afterJoin = join;
        }
        return !afterJoin;
    }

    public static string? Check(string text) => IsSlug(text) ? null : "an id (lower-case letters and digits, joined by - or .)";
}

/// <summary>Times in footage.</summary>
static class Timecodes
{
    public static bool TryParse(string text, out TimeSpan time)
    {
        time = default;
        if (text.Split(':') is not [var hours, { Length: 2 } minutes, { Length: 2 } seconds]) return false;
        if (!Parse(hours, 10_000, out var h) || !Parse(minutes, 60, out var m) || !Parse(seconds, 60, out var s)) return false;
        time = new TimeSpan(h, m, s);
        return true;
    }

    static bool Parse(string digits, int below, out int number) =>
        int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out number) && number < below;
}
