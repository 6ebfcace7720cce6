using System.Globalization;
using FixScore.Records;

namespace FixScore.Disassembly.Tests.Oracle;

/// <summary>Where the routes of a record are not what trying everything shows.</summary>
static class Comparison
{
    /// <summary>Differences for every part, every cost and both readings of the first tool, and steps for the first and last part together.</summary>
    public static IEnumerable<string> Differences(TeardownRecord record)
    {
        var truth = new Truth(record);
        var source = new RecordCase(record);
        string[] ids = [.. record.Parts.Select(part => part.Id)];
        foreach (var (cost, firstTool) in Questions)
        {
            foreach (var id in ids)
                foreach (var difference in Differences(record, truth, source.RouteTo(id, cost, firstTool))) yield return difference;
        }
        foreach (var difference in Differences(record, truth, source.RouteToAll([ids[0], ids[^1]]))) yield return difference;
    }

    static readonly (RouteCost, FirstTool)[] Questions =
        [(RouteCost.Steps, FirstTool.NoChange), (RouteCost.Steps, FirstTool.Change), (RouteCost.Operations, FirstTool.NoChange), (RouteCost.Seconds, FirstTool.NoChange)];

    static IEnumerable<string> Differences(TeardownRecord record, Truth truth, Route route)
    {
        var query = route.Query;
        var expected = truth.To(query.Parts, query.Cost, query.FirstTool);
        return Rows(record, truth, route, expected)
            .Where(row => row.Expected != row.Actual)
            .Select(row => $"{string.Join('+', query.Parts)} {query.Cost} {query.FirstTool}: {row.What} is {row.Actual}, expected {row.Expected}");
    }

    static IEnumerable<(string What, string Expected, string Actual)> Rows(TeardownRecord record, Truth truth, Route route, TrueRoute expected)
    {
        yield return ("reachability", $"{expected.Reachability}", $"{route.Reachability}");
        yield return ("proof", "True", $"{route.IsOptimal}");
        yield return ("sequence", Ids(record, expected.Best), Ids(route.Way));
        yield return ("least sequence", Ids(record, expected.Least), Ids(route.LeastWay));
        yield return ("damages", Shown(expected.Best is { } best ? Things(record, Of(record, best).SelectMany(each => each.Damages)) : []), Shown(route.Damages));
        yield return ("at risk", Shown(expected.Best is { } way ? Things(record, Of(record, way).SelectMany(each => each.Outcomes).SelectMany(each => each.Damages)) : []), Shown(route.AtRisk));
        if (expected.Best is { } most && route.Way is { } shown)
        {
            var least = expected.Least!;
            yield return ("steps of the way", Range(Steps(UnknownTools.Least, most), Steps(UnknownTools.Most, most)), Shown(shown.Steps));
            yield return ("seconds of the way", Seconds(record, most), Shown(shown.Seconds));
            if (expected.Reachability != Reachability.Reachable) yield break;
            yield return ("seconds", Seconds(record, most), Shown(route.Seconds));
            yield return ("operations", Text(most.Sequence.Length), Text(route.Operations ?? -1));
            if (route.Query.Cost == RouteCost.Steps) yield return ("steps", Range(least.Cost, most.Cost), Shown(route.Steps));
            if (route.Query.Cost == RouteCost.Operations || most.Cost == least.Cost && route.Seconds is not null) yield return ("bound", Text(most.Cost), Text(route.LowerBound ?? -1));
        }
        else
        {
            yield return ("steps", "none", Shown(route.Steps));
            yield return ("reason", "True", $"{route.Why is not null}");
        }

        decimal Steps(UnknownTools unknown, Best of) => truth.StepsOf(of.Sequence.Operations, route.Query.FirstTool, unknown);
    }

    static IEnumerable<Operation> Of(TeardownRecord record, Best best) => best.Sequence.Operations.Select(i => record.Operations[i]);

    static IEnumerable<string> Things(TeardownRecord record, IEnumerable<string> ids) =>
        record.Parts.Select(part => part.Id).Concat(record.Joints.Select(joint => joint.Id)).Where(ids.Contains);

    static string Seconds(TeardownRecord record, Best best)
    {
        var times = Of(record, best).Select(Timing.Of).ToArray();
        return times.Contains(null) ? "none" : Range(times.Sum(time => time!.Value.Low), times.Sum(time => time!.Value.High));
    }

    static string Ids(TeardownRecord record, Best? best) => best is null ? "none" : $"[{Shown(Of(record, best).Select(each => each.Id))}]";

    static string Ids(Way? way) => way is null ? "none" : $"[{Shown(way.Operations)}]";

    static string Shown(IEnumerable<string> ids) => string.Join(' ', ids);

    static string Shown(Interval? interval) => interval is { } known ? Range(known.Low, known.High) : "none";

    static string Range(decimal low, decimal high) => $"{Text(low)}..{Text(high)}";

    static string Text(decimal number) => number.ToString("0.####", CultureInfo.InvariantCulture);
}
