using System.Globalization;
using System.Numerics;
using System.Text.RegularExpressions;

namespace FixScore.Reading.Profiles;

/// <summary>Semantic versions, after the grammar that semver.org 2.0.0 publishes.</summary>
static partial class SemanticVersion
{
    public static bool IsValid(string text) => Grammar().IsMatch(text);

    /// <summary>Precedence after section 11 of the specification: lower versions first.</summary>
    public static IComparer<string> Order { get; } = Comparer<string>.Create(Compare);

    static int Compare(string? left, string? right)
    {
        var (a, b) = (Parts(left!), Parts(right!));
        for (var i = 0; i < 3; i++)
            if (a.Core[i].CompareTo(b.Core[i]) is var order and not 0) return order;
        if (a.Pre.Length == 0 || b.Pre.Length == 0) return b.Pre.Length.CompareTo(a.Pre.Length);
        for (var i = 0; i < Math.Min(a.Pre.Length, b.Pre.Length); i++)
            if (Identifier(a.Pre[i], b.Pre[i]) is var order and not 0) return order;
        return a.Pre.Length.CompareTo(b.Pre.Length);
    }

    static (BigInteger[] Core, string[] Pre) Parts(string version)
    {
        if (!IsValid(version)) return ([-1, 0, 0], [version]);
        var halves = version.Split('+')[0].Split('-', 2);
        return ([.. halves[0].Split('.').Select(number => BigInteger.Parse(number, CultureInfo.InvariantCulture))], halves.Length > 1 ? halves[1].Split('.') : []);
    }

    // Numbers below words; numbers by size, words by their letters.
    static int Identifier(string left, string right)
    {
        var (a, b) = (BigInteger.TryParse(left, NumberStyles.None, CultureInfo.InvariantCulture, out var x), BigInteger.TryParse(right, NumberStyles.None, CultureInfo.InvariantCulture, out var y));
        if (a != b) return a ? -1 : 1;
        return a ? x.CompareTo(y) : string.CompareOrdinal(left, right);
    }

    [GeneratedRegex(
        @"^(0|[1-9]\d*)\.(0|[1-9]\d*)\.(0|[1-9]\d*)(?:-((?:0|[1-9]\d*|\d*[a-zA-Z-][0-9a-zA-Z-]*)(?:\.(?:0|[1-9]\d*|\d*[a-zA-Z-][0-9a-zA-Z-]*))*))?(?:\+([0-9a-zA-Z-]+(?:\.[0-9a-zA-Z-]+)*))?\z",
        RegexOptions.CultureInvariant | RegexOptions.ECMAScript)]
    private static partial Regex Grammar();
}
