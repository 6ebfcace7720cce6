using System.Collections.Immutable;
using System.Globalization;
using FixScore.Cli.Terminal;
using FixScore.Disassembly;

namespace FixScore.Cli.Commands.Routing;

/// <summary>Routes to all parts as a table, and what stands in the way of the others.</summary>
sealed class RouteTable(Canvas canvas, CultureInfo culture)
{
    readonly RouteText text = new(culture);

    public void Show(FoundRoutes found)
    {
        ImmutableArray<RouteToPart> reached = [.. found.All.Where(each => each.IsReachable)];
        if (!reached.IsEmpty) Table(found, reached);
        Others("Not reachable without damage:", found, Reachability.Unreachable);
        Others("Not known:", found, Reachability.Unknown);
    }

    void Table(FoundRoutes found, ImmutableArray<RouteToPart> reached)
    {
        string[] tools = [.. found.Case.Record.Tools.Select(tool => tool.Id).Where(id => reached.Any(each => each.Route.Way!.Tools.Contains(id)))];
        var proven = reached.All(each => each.Route.IsOptimal);
        canvas.Table([("Part", false), ("Role", false), ("Steps", true), ("Ops", true), ("Seconds", true), .. Unless(proven, ("Proven", false)), ("Tools", false)],
            reached.Select(each => Row(each, tools, proven)));
        canvas.Line(proven ? "Each route is proven shortest." : "Where it is not proven, the number proven to be needed at least is told; a greater --effort may tell more.");
        if (tools.Length > 0) canvas.Line("Tools:");
        foreach (var (index, tool) in tools.Index()) canvas.Item(1, Letter(index), new Names(found.Case.Record).Tool(tool));
        canvas.Line();
    }

    string[] Row(RouteToPart each, string[] tools, bool proven) =>
    [
        each.Part.Id, each.Part.Role, text.Number(each.Route.Steps), text.Number(each.Route.Operations), text.Number(each.Route.Seconds),
        .. Unless(proven, each.Route.IsOptimal ? "yes" : $"at least {text.Number(each.Route.LowerBound)}"), Letters(each.Route.Way!, tools),
    ];

    void Others(string title, FoundRoutes found, Reachability reachability)
    {
        var others = found.All.Where(each => each.Route.Reachability == reachability).ToArray();
        if (others.Length == 0) return;
        canvas.Line(title);
        foreach (var each in others) canvas.Item(1, "-", $"{each.Part.Id}: {text.Why(each.Route)}");
        canvas.Line();
    }

    static string Letters(Way way, string[] tools)
    {
        var unknown = way.Stops.Any(stop => !stop.Tools.IsRecorded) ? (string[])["?"] : [];
        return string.Join(' ', tools.Index().Where(tool => way.Tools.Contains(tool.Item)).Select(tool => Letter(tool.Index)).Concat(unknown));
    }

    // a to z, then aa, ab and so on.
    static string Letter(int index) => index < 26 ? $"{(char)('a' + index)}" : Letter(index / 26 - 1) + Letter(index % 26);

    static T[] Unless<T>(bool isLeftOut, T item) => isLeftOut ? [] : [item];
}
