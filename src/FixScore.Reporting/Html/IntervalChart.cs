using System.Globalization;

namespace FixScore.Reporting.Html;

/// <summary>Totals as horizontal bars on the profile's scale: solid up to the low end, hatched from there to the high end.</summary>
static class IntervalChart
{
    const int Width = 640;
    const int Left = 8;
    const int RowHeight = 46;

    public static Markup Of(IReadOnlyList<Judgement> ranked, Shown shown)
    {
        var scale = ranked[0].Profile.Scale;
        var height = ranked.Count * RowHeight + 28;
        return Markup.Element("svg",
            [("class", "chart"), ("viewBox", $"0 0 {Text(Width)} {Text(height)}"), ("role", "img"), ("aria-label", Summary(ranked, shown))],
            [Hatch, Axis(scale, height, shown), .. ranked.Select((each, index) => Row(each, index * RowHeight + 4, scale, shown))]);
    }

    static string Summary(IReadOnlyList<Judgement> ranked, Shown shown) =>
        string.Join("; ", ranked.Select(each => $"{each.Device}: {shown.Points(each.Score.Shown)}"));

    static Markup Hatch => new("""<defs><pattern id="open" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="3" height="6" class="hatch"></rect></pattern></defs>""");

    static Markup Axis(ProfileScale scale, int height, Shown shown) => Markup.Join(Enumerable.Range(0, 5).SelectMany(step =>
    {
        var value = scale.Min + (scale.Max - scale.Min) * step / 4;
        var x = At(value, scale);
        return (Markup[])[
            Shape("line", "grid", ("x1", x), ("x2", x), ("y1", "0"), ("y2", Text(height - 20))),
            Label("tick", x, Text(height - 5), shown.Short(value), step == 0 ? "start" : step == 4 ? "end" : "middle")];
    }));

    static Markup Row(Judgement each, int y, ProfileScale scale, Shown shown)
    {
        var (low, high) = (At(each.Score.Total.Low, scale), At(each.Score.Total.High, scale));
        return Markup.Join([
            Label("name", Text(Left), Text(y + 14), $"{each.Device}  {shown.Points(each.Score.Shown)}", "start"),
            Bar("known", At(scale.Min, scale), low, y),
            Bar("open", low, high, y),
            Shape("line", "end", ("x1", low), ("x2", low), ("y1", Text(y + 18)), ("y2", Text(y + 38))),
            Shape("line", "end", ("x1", high), ("x2", high), ("y1", Text(y + 18)), ("y2", Text(y + 38)))]);
    }

    static Markup Bar(string cssClass, string from, string to, int y)
    {
        var width = decimal.Parse(to, CultureInfo.InvariantCulture) - decimal.Parse(from, CultureInfo.InvariantCulture);
        return Shape("rect", cssClass, ("x", from), ("y", Text(y + 20)), ("width", Text(width)), ("height", "16"));
    }

    static Markup Shape(string name, string cssClass, params IEnumerable<(string, string)> attributes) =>
        Markup.Element(name, [("class", cssClass), .. attributes]);

    static Markup Label(string cssClass, string x, string y, string text, string anchor) =>
        Markup.Element("text", [("class", cssClass), ("x", x), ("y", y), ("text-anchor", anchor)], (Markup)text);

    static string At(decimal value, ProfileScale scale) =>
        Text(Left + (value - scale.Min) / (scale.Max - scale.Min) * (Width - 2 * Left));

    static string Text(decimal value) => decimal.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
}
