using System.Globalization;

namespace FixScore.Reporting.Cards;

/// <summary>A verdict as one picture for a video or a post: of one device, or of several side by side.</summary>
/// <remarks>
/// <para>A card has no rule of its own: it shows what the score says. Solid bars are certain, hatched ones depend on what was not observed.
/// Nothing is told by colour alone.</para>
/// <para>The same input gives the same bytes. Names of any length and in any script stay within the picture: they are wrapped, then cut.
/// No name is cut in the title and the description that the SVG carries for those who do not see it. Thread safe.</para>
/// </remarks>
public static class Card
{
    /// <summary>One device as SVG: the verdict in a sentence, what limits it, what each line gives.</summary>
    /// <param name="judgement">The score.</param>
    /// <param name="shape">How large.</param>
    /// <param name="culture">How numbers are written.</param>
    /// <param name="scheme">Which colours.</param>
    public static string Svg(Judgement judgement, CardShape shape, CultureInfo culture, CardScheme scheme = CardScheme.Light) =>
        Draw(judgement, shape, culture, scheme).ToSvg();

    /// <summary>Several devices as SVG: bars on one scale, with places, or ranges of places where totals overlap.</summary>
    /// <param name="ranked">The places, one at least, by one profile, as <see cref="Placing.Of"/> gives them.</param>
    /// <param name="shape">How large.</param>
    /// <param name="culture">How numbers are written.</param>
    /// <param name="scheme">Which colours.</param>
    /// <exception cref="ArgumentException">There is no place.</exception>
    public static string Svg(IReadOnlyList<Placing> ranked, CardShape shape, CultureInfo culture, CardScheme scheme = CardScheme.Light) =>
        Draw(ranked, shape, culture, scheme).ToSvg();

    /// <summary>One device as a picture that is not yet in any format.</summary>
    /// <param name="judgement">The score.</param>
    /// <param name="shape">How large.</param>
    /// <param name="culture">How numbers are written.</param>
    /// <param name="scheme">Which colours.</param>
    public static Picture Draw(Judgement judgement, CardShape shape, CultureInfo culture, CardScheme scheme = CardScheme.Light) =>
        new DeviceCard(CardGrid.Of(shape), culture).Of(judgement, scheme);

    /// <summary>Several devices as a picture that is not yet in any format.</summary>
    /// <param name="ranked">The places, one at least, by one profile, as <see cref="Placing.Of"/> gives them.</param>
    /// <param name="shape">How large.</param>
    /// <param name="culture">How numbers are written.</param>
    /// <param name="scheme">Which colours.</param>
    /// <exception cref="ArgumentException">There is no place.</exception>
    public static Picture Draw(IReadOnlyList<Placing> ranked, CardShape shape, CultureInfo culture, CardScheme scheme = CardScheme.Light) =>
        ranked.Count == 0 ? throw new ArgumentException("There is nothing to show.", nameof(ranked))
        : new RankingCard(CardGrid.Of(shape), culture).Of(ranked, scheme);
}
