using System.Globalization;
using FixScore.Reporting.Html;

namespace FixScore.Reporting.Cards;

/// <summary>A picture as SVG. Attributes instead of style sheets, since video editors read those alone.</summary>
static class PictureSvg
{
    const string Serif = "Charter, 'Bitstream Charter', 'Iowan Old Style', Cambria, Georgia, serif";
    const string Plain = "system-ui, -apple-system, 'Segoe UI', 'DejaVu Sans', sans-serif";

    public static string Of(Picture picture) => Markup.Element("svg",
        [("xmlns", "http://www.w3.org/2000/svg"), ("width", Text(picture.Width)), ("height", Text(picture.Height)),
         ("viewBox", $"0 0 {Text(picture.Width)} {Text(picture.Height)}"), ("role", "img"), ("aria-labelledby", "title description")],
        [new("\n"),
         Line(Markup.Element("title", [("id", "title")], (Markup)Letters.Clean(picture.Title))),
         Line(Markup.Element("desc", [("id", "description")], (Markup)Letters.Clean(picture.Description))),
         Line(Stripes(picture.Scheme)),
         .. picture.Marks.Select(mark => Line(Drawn(mark, picture.Scheme)))]).Html;

    static Markup Line(Markup element) => new(element.Html.TrimEnd('\n') + "\n");

    static Markup Stripes(CardScheme scheme) => Markup.Element("defs", [Markup.Element("pattern",
        [("id", "open"), ("width", Text(Hatching.Period)), ("height", Text(Hatching.Period)), ("patternUnits", "userSpaceOnUse"), ("patternTransform", "rotate(45)")],
        [Rectangle(new(0, 0, Hatching.Stripe, Hatching.Period), Palette.Of(scheme, Tone.Bar))])]);

    static Markup Drawn(Mark mark, CardScheme scheme) => mark switch
    {
        Block block => Rectangle(block.Box, Palette.Of(scheme, block.Tone)),
        Words words => Written(words, scheme),
        _ => Rectangle(mark.Box, "url(#open)"),
    };

    static Markup Rectangle(Box box, string fill) => Markup.Element("rect",
        [("x", Text(box.X)), ("y", Text(box.Y)), ("width", Text(box.Width)), ("height", Text(box.Height)), ("fill", fill)]);

    static Markup Written(Words words, CardScheme scheme) => Markup.Element("text",
        [("x", Text(AnchorOf(words))), ("y", Text(words.Baseline)), ("font-family", words.Face == Face.Plain ? Plain : Serif), ("font-size", Text(words.Size)),
         .. words.Face == Face.Heading ? ((string, string)[])[("font-weight", "700")] : [],
         .. words.Anchor == Anchor.Start ? [] : ((string, string)[])[("text-anchor", words.Anchor == Anchor.End ? "end" : "middle")],
         ("fill", Palette.Of(scheme, words.Tone))],
        (Markup)words.Text);

    static int AnchorOf(Words words) => words.Anchor switch
    {
        Anchor.Start => words.Box.X,
        Anchor.End => words.Box.Right,
        _ => words.Box.X + words.Box.Width / 2,
    };

    static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);
}
