using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Html;

/// <summary>A band between two ends of a scale, and a tick within it.</summary>
static class SpanBar
{
    const int Height = 12;

    public static Markup Of(Extent extent)
    {
        var (low, high) = (Share(extent.Value.Low, extent.Scale), Share(extent.Value.High, extent.Scale));
        return Markup.Element("svg", [("class", "bar"), ("width", "100%"), ("height", IntervalBar.Text(Height)), ("aria-hidden", "true")], [
            IntervalBar.Shape("rect", "track", ("x", "0"), ("y", "0"), ("width", "100%"), ("height", IntervalBar.Text(Height))),
            IntervalBar.Shape("rect", "span", ("x", IntervalBar.Percent(low)), ("y", "3"), ("width", IntervalBar.Percent(high - low)), ("height", "6")),
            .. extent.Tick is { } tick ? [Tick(Share(tick, extent.Scale))] : (Markup[])[]]);
    }

    static Markup Tick(decimal at) =>
        IntervalBar.Shape("line", "tick", ("x1", IntervalBar.Percent(at)), ("x2", IntervalBar.Percent(at)), ("y1", "-2"), ("y2", IntervalBar.Text(Height + 2)));

    static decimal Share(decimal value, Scale scale) => (Math.Clamp(value, scale.Min, scale.Max) - scale.Min) / (scale.Max - scale.Min);
}
