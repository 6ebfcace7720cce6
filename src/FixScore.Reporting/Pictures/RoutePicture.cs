using System.Globalization;
using System.Text;
using FixScore.Disassembly;
using FixScore.Reporting.Html;
using FixScore.Reporting.Sheet;

namespace FixScore.Reporting.Pictures;

/// <summary>A teardown record as a picture: parts in layers from outside inwards, what holds them, and the shortest route to each priority part.</summary>
/// <remarks>
/// <para>An SVG whose text is text, in light and dark, that no meaning of rests on colour. A part lies in the layer of the
/// steps after which its own shortest route frees it. Each route is a line of its own; numbers on it say by which
/// operation a part leaves. Steps, tools and minutes stand below, with hazards and the usual cautions.</para>
/// <para>Up to 40 parts all are drawn. Of more, 40 at most are, those on the routes first; the others are counted layer by
/// layer, joints of a kind between the same parts are one line, and the picture says so. At most 16 routes and 160 lines
/// of joints are drawn.</para>
/// <para>The same input gives the same text. Text of records is cut and escaped. Thread safe.</para>
/// </remarks>
public static class RoutePicture
{
    /// <summary>The picture with routes to the priority parts of Regulation (EU) 2023/1669, as far as the record has them.</summary>
    /// <param name="source">The case.</param>
    /// <param name="culture">How numbers are written.</param>
    public static string Svg(TeardownCase source, CultureInfo culture) => Svg(source, new RouteQuery([]), culture);

    /// <summary>The picture with routes under stated rules.</summary>
    /// <param name="source">The case.</param>
    /// <param name="query">The rules. Its parts are those to show a route to, one route each; without any, the priority parts.</param>
    /// <param name="culture">How numbers are written.</param>
    /// <exception cref="InvalidOperationException">No part of the record has such an id.</exception>
    public static string Svg(TeardownCase source, RouteQuery query, CultureInfo culture) =>
        Of(source, query, culture, isAlone: true, Markup.Element("style", [new Markup($"\n{Resource("scheme.css")}{Resource("route.css")}")])).Html;

    /// <summary>The picture to embed in a page that has <see cref="Style"/> and sets the variables of colour.</summary>
    internal static Markup Of(TeardownCase source, RouteQuery query, CultureInfo culture) => Of(source, query, culture, isAlone: false, Markup.Nothing);

    /// <summary>The rules of style that the picture needs, for the page that embeds it.</summary>
    internal static string Style => Resource("route.css");

    static Markup Of(TeardownCase source, RouteQuery query, CultureInfo culture, bool isAlone, Markup style)
    {
        var (scene, shown, wording) = (new SceneBuilder(source, query, culture).Build(), new Shown(culture), new RouteWording(source.Record, culture));
        var layout = new PictureLayout(scene, PictureHead.Bottom(Measures.LeastWidth));
        var caption = new PictureCaption(scene, wording, layout.Bottom, Math.Min(layout.Width, Measures.LeastWidth), isAlone);
        var title = $"How it comes apart: {new RecordTerms(source.Record, culture).Device}";
        var (width, height) = (layout.Width, caption.Bottom + Measures.Margin);
        return Markup.Element("svg",
            [("xmlns", "http://www.w3.org/2000/svg"), ("class", "route-picture"), ("role", "img"), ("viewBox", $"0 0 {Pen.Text(width)} {Pen.Text(height)}"), ("width", Pen.Text(width)), ("height", Pen.Text(height))],
            [Markup.Element("title", [title]), new("\n"), Markup.Element("desc", [Described(scene, wording)]), new("\n"), style,
             Pen.Box("route-paper", 0, 0, width, height),
             PictureHead.Of(title, layout.Width),
             LayersDrawing.Of(layout, shown), JointsDrawing.Of(layout, shown), PartsDrawing.Of(layout), RoutesDrawing.Of(scene, layout), caption.Drawn]);
    }

    static string Described(PictureScene scene, RouteWording wording) => TextRoom.Fit(
        string.Join(" ", scene.Targets.Select(target => $"{wording.Title(target)}: {wording.Lines(target).First()}").Concat(scene.Notes)), 20_000, Measures.SmallSize);

    static string Resource(string name)
    {
        using var stream = typeof(RoutePicture).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
