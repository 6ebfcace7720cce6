using System.Globalization;
using FixScore.Reporting.Html;

namespace FixScore.Reporting.Pictures;

/// <summary>Shapes and text at whole-numbered places.</summary>
static class Pen
{
    static readonly Markup NewLine = new("\n");

    public static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>A shape on a line of its own, so that two pictures can be compared.</summary>
    public static Markup Shape(string name, string cssClass, params IEnumerable<(string, string)> attributes) =>
        Markup.Join(Markup.Element(name, [("class", cssClass), .. attributes]), NewLine);

    public static Markup Line(string cssClass, int x1, int y1, int x2, int y2) =>
        Shape("line", cssClass, ("x1", Text(x1)), ("y1", Text(y1)), ("x2", Text(x2)), ("y2", Text(y2)));

    public static Markup Box(string cssClass, int x, int y, int width, int height, int round = 0) =>
        Shape("rect", cssClass, ("x", Text(x)), ("y", Text(y)), ("width", Text(width)), ("height", Text(height)), ("rx", Text(round)));

    public static Markup Circle(string cssClass, int x, int y, int radius) =>
        Shape("circle", cssClass, ("cx", Text(x)), ("cy", Text(y)), ("r", Text(radius)));

    public static Markup Words(string cssClass, int x, int y, string words, params IEnumerable<(string, string)> attributes) =>
        Markup.Join(Markup.Element("text", [("class", cssClass), ("x", Text(x)), ("y", Text(y)), .. attributes], (Markup)words), NewLine);

    public static Markup Group(string cssClass, params IEnumerable<Markup> content) =>
        Markup.Join(Markup.Classed("g", cssClass, content.Prepend(NewLine)), NewLine);
}
