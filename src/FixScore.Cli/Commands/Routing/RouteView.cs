using System.Collections.Immutable;
using FixScore.Cli.Terminal;
using FixScore.Records;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Routing;

/// <summary>Routes as text: a table of all parts, or the parts asked for in full.</summary>
sealed class RouteView(CommandSession session)
{
    readonly Canvas canvas = session.Canvas;

    public void Show(ImmutableArray<FoundRoutes> found, bool isDetailed, bool withClasses)
    {
        foreach (var each in found)
        {
            canvas.Heading(new Names(each.Case.Record).Device);
            if (each.All.IsEmpty) NoSuchPart();
            else if (isDetailed) Details(each);
            else new RouteTable(canvas, session.Culture).Show(each);
            if (withClasses && !each.All.IsEmpty) new ClassTable(canvas).Show(each);
        }
        if (isDetailed) Cautions(found);
        else canvas.Line("Work on devices can hurt: --part PART tells a route in full, with its hazards and the usual cautions.");
    }

    void NoSuchPart()
    {
        canvas.Line("There is no such part in this record.");
        canvas.Line();
    }

    void Details(FoundRoutes found)
    {
        foreach (var each in found.All) new RouteDetails(canvas, session.Culture).Show(each);
    }

    void Cautions(ImmutableArray<FoundRoutes> found)
    {
        foreach (var caution in SafetyText.For(found.SelectMany(each => each.All).Select(Touched))) canvas.Item(0, "!", caution);
    }

    // Only what the route goes by; a battery is a hazard to whoever opens the device for another part, too.
    static TeardownRecord Touched(RouteToPart found)
    {
        var (record, stops) = (found.Case.Record, found.Route.Way?.Stops ?? []);
        var parts = stops.SelectMany(stop => stop.Taken).Append(found.Part.Id)
            .Concat(record.Joints.Where(joint => stops.Any(stop => stop.Undone.Contains(joint.Id))).SelectMany(joint => joint.Joins))
            .ToHashSet(StringComparer.Ordinal);
        return record with
        {
            Parts = [.. record.Parts.Where(part => part.Role == Roles.Battery || parts.Contains(part.Id))],
            Operations = [.. stops.Select(stop => stop.Operation)],
        };
    }
}
