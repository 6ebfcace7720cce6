using FixScore.Cli.Commands.Routing.Classes;
using FixScore.Cli.Terminal;

namespace FixScore.Cli.Commands.Routing;

/// <summary>Classes of parts as a table, and what the letters say.</summary>
sealed class ClassTable(Canvas canvas)
{
    public void Show(FoundRoutes found)
    {
        canvas.Heading("Classes after EN 45554, the worst along the route");
        canvas.Table([("Part", false), .. ClassAspect.All.Select(aspect => (aspect.Title, false))], found.All.Select(Row), Names.FoldedAt);
        foreach (var aspect in ClassAspect.All) canvas.Item(1, "", aspect.Legend, quiet: true);
        canvas.Line("A range is what is still possible, - that nothing is known.");
        canvas.Line(ClassAspect.Source);
        canvas.Line();
    }

    static string[] Row(RouteToPart each) =>
        [each.Part.Id, .. RepairClasses.Of(each.Case, each.Route).All.Select(pair => pair.Letters?.ToString() ?? RouteText.Nothing)];
}
