using System.Globalization;
using System.Xml.Linq;
using FixScore.Reporting.Cards;

namespace FixScore.Reporting.Tests.Cards;

/// <summary>Contrast after WCAG 2.2, success criteria 1.4.3 (text, 4.5 to 1) and 1.4.11 (graphics, 3 to 1).</summary>
public sealed class PaletteTests
{
    [Theory]
    [InlineData(Tone.Ink, Tone.Paper, 4.5)]
    [InlineData(Tone.Soft, Tone.Paper, 4.5)]
    [InlineData(Tone.Ink, Tone.Track, 4.5)]
    [InlineData(Tone.Bar, Tone.Paper, 4.5)]
    [InlineData(Tone.Bar, Tone.Track, 4.5)]
    public void What_is_read_stands_out(Tone front, Tone back, double least) => Assert.All(Enum.GetValues<CardScheme>(),
        scheme => Assert.True(Contrast(Palette.Of(scheme, front), Palette.Of(scheme, back)) >= least, $"{scheme}"));

    // The definition's own example value: black on white is 21 to 1.
    [Fact]
    public void Contrast_is_measured_as_defined() => Assert.Equal(21, Contrast("#000000", "#ffffff"), 10);

    [Fact]
    public void A_card_is_drawn_in_the_colours_of_its_scheme_alone() => Assert.All(Deck.Tame, picture => Assert.Empty(
        Deck.Parsed(picture).Descendants().Attributes("fill").Select(fill => fill.Value).Except(Enum.GetValues<Tone>().Select(tone => Palette.Of(picture.Scheme, tone)).Append("url(#open)"))));

    static double Contrast(string a, string b) =>
        (Math.Max(Luminance(a), Luminance(b)) + 0.05) / (Math.Min(Luminance(a), Luminance(b)) + 0.05);

    static double Luminance(string colour)
    {
        double Channel(int at)
        {
            var value = int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * Channel(1) + 0.7152 * Channel(3) + 0.0722 * Channel(5);
    }
}
