using System.Globalization;

namespace FixScore.Reporting.Html;

/// <summary>A drawing of intervals on a scale, as wide as its place: solid up to the low end, hatched from there to the high end.</summary>
/// <remarks>Places on the scale are percentages of the width, so that text and lines keep their size on a phone.</remarks>
static class IntervalBar
{
    /// <summary>The hatching that all drawings of a page share; stands once, before them.</summary>
    public static Markup Hatching => new(
        """<svg class="defs" width="0" height="0" aria-hidden="true"><defs><pattern id="open" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="stripe" width="2" height="5"></rect></pattern></defs></svg>""" + "\n");

    /// <summary>One interval as a bar with its ends marked.</summary>
    public static Markup Bar(Interval value, Scale scale, int top, int height)
    {
        var (low, high) = (Share(value.Low, scale), Share(value.High, scale));
        return Markup.Join(
            Shape("rect", "known", ("x", "0"), ("y", Text(top)), ("width", Percent(low)), ("height", Text(height))),
            Shape("rect", "open", ("x", Percent(low)), ("y", Text(top)), ("width", Percent(high - low)), ("height", Text(height))),
            End(low, top, height), End(high, top, height));
    }

    public static Markup Shape(string name, string cssClass, params IEnumerable<(string, string)> attributes) =>
        Markup.Element(name, [("class", cssClass), .. attributes]);

    public static string Percent(decimal share) => (share * 100).ToString("0.##", CultureInfo.InvariantCulture) + "%";

    public static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);

    static Markup End(decimal share, int top, int height) =>
        Shape("line", "end", ("x1", Percent(share)), ("x2", Percent(share)), ("y1", Text(top - 3)), ("y2", Text(top + height + 3)));

    static decimal Share(decimal value, Scale scale) => (value - scale.Min) / (scale.Max - scale.Min);
}
