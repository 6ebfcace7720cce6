using FixScore.Reporting.Html;

namespace FixScore.Reporting.Pictures;

/// <summary>Joints as lines between the parts they hold, with their kind as form and word.</summary>
static class JointsDrawing
{
    const int Lead = 8;

    public static Markup Of(PictureLayout layout, Shown shown) => Pen.Group("route-joints",
    [
        .. layout.Joints.Select(joint => Lines(joint, layout.BoxRight)),
        .. layout.Joints.Select(joint => Pen.Words("route-kind", layout.BoxRight + Lead, joint.Word - 3,
            TextRoom.Fit(joint.Drawn.Words, Measures.JointLabel - Lead, Measures.SmallSize))),
        .. layout.Bands.SelectMany(band => band.Parts).Select(part => Counted(layout, part, shown)),
    ]);

    public static string ClassOf(JointForm form) => $"route-joint route-{Word.Of(form)}";

    static Markup Lines(PlacedJoint joint, int left)
    {
        var taps = joint.Ends.Select(y => $"M{Pen.Text(left)} {Pen.Text(y)}H{Pen.Text(joint.Lane)}");
        var path = $"{string.Concat(taps)}M{Pen.Text(joint.Lane)} {Pen.Text(joint.Ends[0])}V{Pen.Text(joint.Ends[^1])}";
        var title = Markup.Element("title", [TextRoom.Fit($"{joint.Drawn.Words}: {string.Join(", ", joint.Drawn.Ids)}", 400, Measures.SmallSize)]);
        return Markup.Join([
            Markup.Element("path", [("class", ClassOf(joint.Drawn.Form)), ("d", path)], title), new("\n"),
            .. joint.Ends.Select(y => Pen.Circle("route-end", left, y, 3))]);
    }

    static Markup Counted(PictureLayout layout, PlacedPart part, Shown shown) => layout.CountAt(part) is not { } count ? Markup.Nothing
        : Pen.Words("route-folded", layout.BoxRight + Lead, count.Y, count.Count == 1 ? "1 joint, not drawn" : $"{shown.Number(count.Count)} joints, not drawn");
}
