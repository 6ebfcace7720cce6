using System.Globalization;
using FixScore.Reporting.Cards;

namespace FixScore.Reporting.Images;

/// <summary>Cards as PNG.</summary>
/// <remarks>
/// <para>Nothing of the machine is asked: fonts are embedded, letters are filled as outlines in the font's own units, and the file is packed by this package's own code.
/// What is left to the drawing library is filling shapes; measured on Linux x64 only.</para>
/// <para>The embedded fonts have Latin, Greek and Cyrillic letters. Any other letter is drawn as an empty box; <see cref="Lacks"/> tells which.
/// The SVG of a card holds them all, and a browser can draw it. Thread safe.</para>
/// </remarks>
public static class CardImage
{
    /// <summary>The card of one device as PNG.</summary>
    /// <param name="judgement">The score.</param>
    /// <param name="shape">How large.</param>
    /// <param name="culture">How numbers are written.</param>
    /// <param name="scheme">Which colours.</param>
    public static byte[] Png(Judgement judgement, CardShape shape, CultureInfo culture, CardScheme scheme = CardScheme.Light) =>
        Png(Card.Draw(judgement, shape, culture, scheme));

    /// <summary>The card of several devices as PNG.</summary>
    /// <param name="ranked">The places, one at least, by one profile.</param>
    /// <param name="shape">How large.</param>
    /// <param name="culture">How numbers are written.</param>
    /// <param name="scheme">Which colours.</param>
    /// <exception cref="ArgumentException">There is no place.</exception>
    public static byte[] Png(IReadOnlyList<Placing> ranked, CardShape shape, CultureInfo culture, CardScheme scheme = CardScheme.Light) =>
        Png(Card.Draw(ranked, shape, culture, scheme));

    /// <summary>A picture as PNG.</summary>
    public static byte[] Png(Picture picture) => PngFile.Of(picture.Width, picture.Height, Painter.Paint(picture));

    /// <summary>The letters of a picture that the embedded fonts do not have, each once, in the order of the picture; empty when all are drawn.</summary>
    public static string Lacks(Picture picture) => string.Concat(picture.Marks.OfType<Words>()
        .SelectMany(words => words.Text.EnumerateRunes().Where(letter => !Typefaces.Of(words.Face).Any(face => face.Has(letter)))).Distinct());
}
