using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using FixScore.Reporting.Reports;

namespace FixScore.Reporting.Tests;

/// <summary>The page can be read: contrast after WCAG 2.2, success criteria 1.4.3 (text, 4.5 to 1) and 1.4.11 (graphics, 3 to 1).</summary>
public sealed partial class StyleTests
{
    static readonly string Page = Encoding.UTF8.GetString(Report.Html(Bench.Report, CultureInfo.InvariantCulture));

    static readonly Dictionary<string, string>[] Schemes =
        [.. Scheme().Matches(Page).Select(scheme => Colour().Matches(scheme.Value).ToDictionary(colour => colour.Groups[1].Value, colour => colour.Groups[2].Value))];

    [Fact]
    public void There_is_a_light_a_dark_and_a_printed_scheme_with_the_same_colours()
    {
        Assert.Equal(3, Schemes.Length);
        Assert.All(Schemes, scheme => Assert.Equal(Schemes[0].Keys, scheme.Keys));
    }

    [Theory]
    [InlineData("ink", "paper", 4.5)]
    [InlineData("soft", "paper", 4.5)]
    [InlineData("mind", "paper", 4.5)]
    [InlineData("link", "paper", 4.5)]
    [InlineData("soft", "track", 4.5)]
    [InlineData("ink", "track", 4.5)]
    [InlineData("bar", "paper", 3)]
    [InlineData("bar", "track", 3)]
    [InlineData("end", "paper", 3)]
    public void What_is_read_stands_out(string front, string back, double least) =>
        Assert.All(Schemes, scheme => Assert.True(Contrast(scheme[front], scheme[back]) >= least, $"{front} on {back}: {Contrast(scheme[front], scheme[back])}"));

    // The definition's own example values: black on white is 21 to 1.
    [Fact]
    public void Contrast_is_measured_as_defined() => Assert.Equal(21, Contrast("#000000", "#ffffff"), 10);

    // A low score must not look like an alarm nor a high one like approval: bars have one colour. That of cautions marks hazards.
    [Fact]
    public void All_bars_have_one_colour() => Assert.Equal(["bar"], Schemes[0].Keys.Where(name => Page.Contains($"fill: var(--{name})", StringComparison.Ordinal) && name is not ("ink" or "soft" or "track" or "paper" or "mind")));

    static double Contrast(string a, string b)
    {
        var (one, other) = (Luminance(a), Luminance(b));
        return (Math.Max(one, other) + 0.05) / (Math.Min(one, other) + 0.05);
    }

    static double Luminance(string colour)
    {
        double Channel(int at)
        {
            var value = int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * Channel(1) + 0.7152 * Channel(3) + 0.0722 * Channel(5);
    }

    [GeneratedRegex(@":root \{[^}]*\}")]
    private static partial Regex Scheme();

    [GeneratedRegex("--([a-z]+): (#[0-9a-f]{6})")]
    private static partial Regex Colour();
}
