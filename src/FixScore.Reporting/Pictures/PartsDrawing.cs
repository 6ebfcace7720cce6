using FixScore.Reporting.Html;
using FixScore.Reporting.Sheet;

namespace FixScore.Reporting.Pictures;

/// <summary>Parts as boxes with their names and hazards.</summary>
static class PartsDrawing
{
    public static Markup Of(PictureLayout layout) => Pen.Group("route-parts",
        layout.Bands.SelectMany(band => band.Parts).Select(part => Part(part, layout.BoxLeft)));

    static Markup Part(PlacedPart part, int left)
    {
        var state = part.Drawn.IsTarget ? " route-target" : "";
        var (x, name) = (left + Measures.BoxPadding, BoxLines.Name(part.Drawn));
        return Markup.Join(
        [
            Pen.Box($"route-box{state}", left, part.Top, Measures.BoxWidth, part.Height, 3),
            Pen.Words($"route-name{state}", x, part.Top + 20, name),
            .. part.Lines.Select((line, row) => Line(line, x, part.Top + Measures.BoxLeast + 8 + row * Measures.LineHeight)),
        ]);
    }

    static Markup Line(BoxLine line, int x, int y) =>
        line.Hazards.IsEmpty ? Pen.Words("route-soft", x, y, line.Text) : Hazards(line, x, y);

    /// <summary>Signs with their words, from a place on.</summary>
    public static Markup Hazards(BoxLine line, int x, int y) => Markup.Join(BoxLines.Placed(line.Hazards, x).SelectMany(each => new[]
    {
        HazardSigns.At(each.Hazard, each.X, y - 11),
        Pen.Words("route-hazard", BoxLines.WordAt(each.X), y, RecordTerms.Plainly(each.Hazard)),
    }));
}
