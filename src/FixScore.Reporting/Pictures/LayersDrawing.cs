using FixScore.Reporting.Html;

namespace FixScore.Reporting.Pictures;

/// <summary>The layers with their depth, and what is only counted in them.</summary>
static class LayersDrawing
{
    public static Markup Of(PictureLayout layout, Shown shown) => Pen.Group("route-layers",
    [
        Pen.Words("route-head", Measures.Margin, layout.Top - 8, "Free after"),
        Pen.Words("route-head", layout.BoxRight + 10, layout.Top - 8, "Held by"),
        .. layout.Bands.SelectMany((band, index) => Layer(layout, band, index, shown)),
        Pen.Line("route-edge", Measures.Margin, layout.Bottom, layout.Width - Measures.Margin, layout.Bottom),
    ]);

    static IEnumerable<Markup> Layer(PictureLayout layout, PlacedBand band, int index, Shown shown)
    {
        var width = layout.Width - 2 * Measures.Margin;
        if (index % 2 == 0) yield return Pen.Box("route-layer", Measures.Margin, band.Top, width, band.Bottom - band.Top);
        yield return Pen.Line("route-edge", Measures.Margin, band.Top, Measures.Margin + width, band.Top);
        yield return Pen.Words("route-depth", Measures.Margin + 8, band.Top + Measures.BandGap + 20, TextRoom.Fit(band.Band.Title, Measures.DepthWidth - 8, Measures.NameSize));
        foreach (var part in band.Parts)
            yield return Pen.Line("route-row", Measures.Margin + Measures.DepthWidth, part.Middle, layout.BoxLeft, part.Middle);
        if (band.Band.Folded > 0)
            yield return Pen.Words("route-folded", layout.BoxLeft + Measures.BoxPadding, band.Bottom - Measures.BandGap - 4, Folded(band, shown));
    }

    static string Folded(PlacedBand band, Shown shown)
    {
        var (count, more) = (shown.Number(band.Band.Folded), band.Parts.IsEmpty ? "" : " more");
        return band.Band.Folded == 1 ? $"{count}{more} part, not drawn" : $"{count}{more} parts, not drawn";
    }
}
