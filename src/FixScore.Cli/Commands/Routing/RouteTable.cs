using System.Collections.Immutable;
using System.Globalization;
using FixScore.Cli.Terminal;
using FixScore.Disassembly;

namespace FixScore.Cli.Commands.Routing;

/// <summary>Routes to all parts as a table, and what stands in the way of the others.</summary>
sealed class RouteTable(Canvas canvas, CultureInfo culture)
{
    const int Letters = 26;
    const string Unknown = "?";

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
            reached.Select(each => Row(each, tools, proven)), Names.FoldedAt);
        canvas.Line(proven ? "Each route is proven shortest." : "Where a route is not proven shortest, it is told what no route can be below; a greater --effort may tell more.");
        Tools(new(found.Case.Record), tools, reached.Any(each => IsUnknown(each.Route.Way!)));
        canvas.Line();
    }

    string[] Row(RouteToPart each, string[] tools, bool proven) =>
    [
        each.Part.Id, each.Part.Role, text.Number(each.Route.Steps), text.Number(each.Route.Operations), text.Number(each.Route.Seconds),
        .. Unless(proven, each.Route.IsOptimal ? "yes" : $">= {text.Number(each.Route.LowerBound)}"), Marks(each.Route.Way!, tools),
    ];

    void Others(string title, FoundRoutes found, Reachability reachability)
    {
        var others = found.All.Where(each => each.Route.Reachability == reachability).ToArray();
        if (others.Length == 0) return;
        canvas.Line(title);
        foreach (var each in others) canvas.Item(1, "-", $"{each.Part.Id}: {text.Why(each.Route)}");
        canvas.Line();
    }

    void Tools(Names names, string[] tools, bool someAreUnknown)
    {
        if (tools.Length > 0) canvas.Line("Tools:");
        foreach (var (index, tool) in tools.Index()) canvas.Item(1, Mark(index, tools), names.Tool(tool));
        if (someAreUnknown) canvas.Item(1, Unknown, "tools not recorded");
    }

    static string Marks(Way way, string[] tools)
    {
        var marks = tools.Index().Where(tool => way.Tools.Contains(tool.Item)).Select(tool => Mark(tool.Index, tools)).Concat(IsUnknown(way) ? [Unknown] : []);
        return string.Join(tools.Length > Letters ? " " : "", marks.DefaultIfEmpty("by hand"));
    }

    // Letters need no blanks between them; numbers do, where there are more tools than letters.
    static string Mark(int index, string[] tools) => tools.Length > Letters ? (index + 1).ToString(CultureInfo.InvariantCulture) : $"{(char)('a' + index)}";

    static bool IsUnknown(Way way) => way.Stops.Any(stop => !stop.Tools.IsRecorded);

    static T[] Unless<T>(bool isLeftOut, T item) => isLeftOut ? [] : [item];
}
