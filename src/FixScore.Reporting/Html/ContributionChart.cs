using System.Collections.Immutable;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Html;

/// <summary>Where the points of one score come from: a row for each line below the total, as long as what the line could add, filled as far as it does.</summary>
/// <remarks>Where lines do not add up, every row is as long as its scale and filled with the line's own points.</remarks>
static class ContributionChart
{
    const int RowHeight = 44;
    const int BarTop = 22;
    const int BarHeight = 12;
    const int LongestTitle = 20;

    public static Markup Of(Judgement judgement, Shown shown)
    {
        ScoreNode[] lines = [.. Lines(judgement)];
        var most = lines.Select(line => MostOf(judgement, line)).DefaultIfEmpty(0).Max();
        return Markup.Element("svg",
            [("class", "chart"), ("width", "100%"), ("height", IntervalBar.Text(lines.Length * RowHeight)), ("role", "img"), ("aria-label", Summary(judgement, shown))],
            [.. lines.Select((line, row) => Row(judgement, line, row * RowHeight, most, shown))]);
    }

    /// <summary>The same in words.</summary>
    public static string Summary(Judgement judgement, Shown shown) =>
        string.Join("; ", Lines(judgement).Select(line => $"{line.Title}: {Points(judgement, line, shown)}"));

    /// <summary>The same as a table.</summary>
    public static Grid Table(string caption, Judgement judgement, Shown shown) => new(caption, [new("Line"), new("", GridKind.Bar), new("Points", GridKind.Number)],
        [.. Lines(judgement).Select(line => (ImmutableArray<GridCell>)[line.Title, new("") { Extent = Extent(judgement, line) }, Points(judgement, line, shown)])]);

    static Extent? Extent(Judgement judgement, ScoreNode line) => MostOf(judgement, line) is > 0 and var most ? new(ValueOf(judgement, line), new Scale(0, most)) : null;

    static IEnumerable<ScoreNode> Lines(Judgement judgement) => judgement.Score.Nodes.Where(node => node.Path.Count(letter => letter == '/') == 1);

    static Markup Row(Judgement judgement, ScoreNode line, int top, decimal most, Shown shown)
    {
        var length = MostOf(judgement, line);
        var value = ValueOf(judgement, line);
        var share = most > 0 ? length / most : 0;
        return Markup.Join(
            Label("name", "0", top + 14, Cut(line.Title), "start"),
            Label("points", "100%", top + 14, Points(judgement, line, shown), "end"),
            IntervalBar.Shape("rect", "track", ("x", "0"), ("y", IntervalBar.Text(top + BarTop)), ("width", IntervalBar.Percent(share)), ("height", IntervalBar.Text(BarHeight))),
            length > 0 ? IntervalBar.Bar(value, new Scale(0, most), top + BarTop, BarHeight) : Markup.Nothing);
    }

    // Beside the points on a telephone; the whole name stands in the table of every line.
    static string Cut(string title) => title.Length <= LongestTitle ? title : title[..(LongestTitle - 1)] + "\u2026";

    static string Points(Judgement judgement, ScoreNode line, Shown shown) =>
        line.Share == 0 && line.Contribution is null && judgement.AddsUp ? "left out"
        : $"{shown.Points(EndsOf(judgement, line))} of {shown.Short(MostOf(judgement, line))}";

    static Ends EndsOf(Judgement judgement, ScoreNode line)
    {
        var value = ValueOf(judgement, line);
        return new(value.Low, value.High);
    }

    // What a line adds is counted from the low end of the scale, so that no bar begins below zero.
    static Interval ValueOf(Judgement judgement, ScoreNode line)
    {
        if (!judgement.AddsUp) return new(line.Value.Low - judgement.ScaleOf(line).Min, line.Value.High - judgement.ScaleOf(line).Min);
        var floor = line.Share * judgement.Profile.Scale.Min;
        return line.Contribution is { } ends ? new(Math.Max(0, ends.Low - floor), Math.Max(0, ends.High - floor)) : new(0, 0);
    }

    static decimal MostOf(Judgement judgement, ScoreNode line)
    {
        if (judgement.AddsUp) return line.Share * (judgement.Profile.Scale.Max - judgement.Profile.Scale.Min);
        var scale = judgement.ScaleOf(line);
        return scale.Max - scale.Min;
    }

    static Markup Label(string cssClass, string x, int y, string text, string anchor) =>
        Markup.Element("text", [("class", cssClass), ("x", x), ("y", IntervalBar.Text(y)), ("text-anchor", anchor)], (Markup)text);
}
