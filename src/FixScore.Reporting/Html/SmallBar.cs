using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Html;

/// <summary>A bar in a cell of a table: solid up to the low end, hatched from there to the high end. Size and track come from the style sheet, for there are many.</summary>
static class SmallBar
{
    public static Markup Of(Extent extent)
    {
        var (low, high) = (Share(extent.Value.Low, extent.Scale), Share(extent.Value.High, extent.Scale));
        return Markup.Element("svg", [("class", "bar"), ("aria-hidden", "true")], [
            low > 0 ? IntervalBar.Shape("rect", "known", ("width", IntervalBar.Percent(low)), ("height", "12")) : Markup.Nothing,
            high > low ? IntervalBar.Shape("rect", "open", ("x", IntervalBar.Percent(low)), ("width", IntervalBar.Percent(high - low)), ("height", "12")) : Markup.Nothing]);
    }

    /// <summary>Where a value stands on a scale, 0 to 1.</summary>
    public static decimal Share(decimal value, Scale scale) => (Math.Clamp(value, scale.Min, scale.Max) - scale.Min) / (scale.Max - scale.Min);
}
