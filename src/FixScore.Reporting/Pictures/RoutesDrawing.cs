using FixScore.Reporting.Html;

namespace FixScore.Reporting.Pictures;

/// <summary>Routes as lines of their own through the layers, with a mark where a part leaves.</summary>
static class RoutesDrawing
{
    /// <summary>Forms of lines; after these they begin again, and the names above and the places tell them apart.</summary>
    const int Forms = 6;

    public static Markup Of(PictureScene scene, PictureLayout layout) =>
        Pen.Group("route-routes", scene.Routes.Select((route, index) => Route(route, index, layout)));

    public static string ClassOf(int index) => $"route-line route-form-{Pen.Text(index % Forms)}";

    static Markup Route(PictureRoute route, int index, PictureLayout layout)
    {
        var (x, visits) = (PictureLayout.LaneAt(index), route.Visits.Where(visit => layout.Parts.ContainsKey(visit.Part)).ToArray());
        var end = visits.Select(visit => layout.Parts[visit.Part].Middle).DefaultIfEmpty(layout.Top).Max();
        return Markup.Join(
        [
            Pen.Line(ClassOf(index), x, layout.Top - 6, x, end),
            Label(TextRoom.Fit(BoxLines.NameOf(route.Target.Part), Measures.LaneLabel, Measures.SmallSize), x + 3, layout.Top - 12),
            .. visits.Select(visit => Visit(visit, x, layout.Parts[visit.Part].Middle, visit.Part == route.Target.Part.Id)),
        ]);
    }

    static Markup Label(string name, int x, int y) =>
        Pen.Words("route-label", x, y, name, ("transform", $"rotate(-45 {Pen.Text(x)} {Pen.Text(y)})"));

    static Markup Visit(RouteVisit visit, int x, int y, bool isTarget)
    {
        const int Half = Measures.Station;
        var mark = isTarget ? Pen.Box("route-goal", x - Half, y - Half, 2 * Half, 2 * Half, 2)
            : Pen.Circle(visit.IsShifted ? "route-stop route-shifted" : "route-stop", x, y, Half);
        return Markup.Join(mark, Pen.Words(isTarget ? "route-number route-at-goal" : "route-number", x, y + 4, Pen.Text(visit.Number)));
    }
}
