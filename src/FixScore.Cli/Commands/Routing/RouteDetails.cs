using System.Globalization;
using FixScore.Cli.Terminal;
using FixScore.Disassembly;

namespace FixScore.Cli.Commands.Routing;

/// <summary>The route to one part, in full.</summary>
sealed class RouteDetails(Canvas canvas, CultureInfo culture)
{
    readonly RouteText text = new(culture);

    public void Show(RouteToPart found)
    {
        var (route, names) = (found.Route, new Names(found.Case.Record));
        canvas.Heading($"Route to {names.Part(found.Part.Id)}");
        foreach (var line in Verdict(found)) canvas.Line(line);
        if (route.Way is { } way) Show(found, names, way);
        // A table ends with a blank line of its own.
        if (route.Recorded.IsEmpty) canvas.Line();
        else Recorded(route);
    }

    void Show(RouteToPart found, Names names, Way way)
    {
        canvas.Line();
        new WayView(canvas, culture, found.Case.Record).Show(way);
        canvas.Line();
        if (found.Route.LeastWay is { } least && !least.Operations.SequenceEqual(way.Operations))
            canvas.Line($"With {text.Steps(least.Steps)}, if unrecorded tools are bare hands: {string.Join(", ", least.Operations)}.");
        if (way.LongestWait is { } wait and > 0) canvas.Line($"Longest wait: {text.Number(wait)} s with hands free.");
        if (way.ReassemblySeconds is { } again) canvas.Line($"Putting it together again: {text.Time(again)}.");
        if (!found.Route.AtRisk.IsEmpty) canvas.Line($"Damaged on some unit when this was tried: {names.Things(found.Route.AtRisk)}.");
        if (!found.Route.Damages.IsEmpty) canvas.Line($"Damages: {names.Things(found.Route.Damages)}.");
        Reassembly(new(found, way));
    }

    void Reassembly(ReassemblyText reassembly)
    {
        if (!reassembly.Lines.Any()) return;
        canvas.Line("To be at hand for reassembly:");
        foreach (var line in reassembly.Lines) canvas.Item(1, "-", line);
    }

    IEnumerable<string> Verdict(RouteToPart found)
    {
        var why = text.Why(found.Route);
        return found.Route switch
        {
            { Steps: { } steps, Operations: { } operations } route => [$"{text.Cost(steps, operations, route.Seconds)}. {text.Proof(route)}"],
            { Reachability: Reachability.Unknown } => [$"Not known: {why}"],
            { Way: { } way } => [$"Not reachable without damage: {why}", $"With least damage: {text.Cost(way.Steps, way.Stops.Length, way.Seconds)}."],
            _ => [$"Not reachable: {why}"],
        };
    }

    void Recorded(Route route)
    {
        canvas.Line("Ways that were published or filmed, beside it:");
        canvas.Table([("Way", false), ("By", false), ("Steps", true), ("Operations", true), ("Seconds", true)],
            route.Recorded.Select(each => Row(each.Sequence.Id, Word.Of(each.Sequence.By), each.Way)).Prepend(Row("this route", "", route)));
    }

    string[] Row(string name, string by, Way way) => [name, by, text.Number(way.Steps), text.Number(way.Stops.Length), text.Number(way.Seconds)];

    string[] Row(string name, string by, Route route) => [name, by, text.Number(route.Steps), text.Number(route.Operations), text.Number(route.Seconds)];
}
