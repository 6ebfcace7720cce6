using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Html;

/// <summary>A band between two ends of a scale, and a tick within it. Size and track come from the style sheet.</summary>
static class SpanBar
{
    public static Markup Of(Extent extent)
    {
        var (low, high) = (SmallBar.Share(extent.Value.Low, extent.Scale), SmallBar.Share(extent.Value.High, extent.Scale));
        return Markup.Element("svg", [("class", "bar"), ("aria-hidden", "true")], [
            IntervalBar.Shape("rect", "span", ("x", IntervalBar.Percent(low)), ("y", "3"), ("width", IntervalBar.Percent(high - low)), ("height", "6")),
            .. extent.Tick is { } tick ? [Tick(IntervalBar.Percent(SmallBar.Share(tick, extent.Scale)))] : (Markup[])[]]);
    }

    static Markup Tick(string at) => IntervalBar.Shape("line", "tick", ("x1", at), ("x2", at), ("y1", "0"), ("y2", "12"));
}
