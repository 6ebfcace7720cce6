using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Cli.Commands.Routing.Classes;
using FixScore.Cli.Files;
using FixScore.Disassembly;

namespace FixScore.Cli.Commands.Routing;

/// <summary>Routes as JSON: an object for one record, a list of them for several.</summary>
static class RouteJson
{
    public static byte[] Of(ImmutableArray<FoundRoutes> found, bool withClasses) => JsonOutput.Write(json =>
    {
        if (found.Length > 1) json.WriteStartArray();
        foreach (var each in found) Record(json, each, withClasses);
        if (found.Length > 1) json.WriteEndArray();
    });

    static void Record(Utf8JsonWriter json, FoundRoutes found, bool withClasses)
    {
        json.WriteStartObject();
        json.WriteString("record", found.Case.Record.Id);
        json.WriteStartArray("routes");
        foreach (var each in found.All)
        {
            json.WriteStartObject();
            Members(json, each.Part.Id, each.Route);
            if (withClasses) Classes(json, RepairClasses.Of(each.Case, each.Route));
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    static void Members(Utf8JsonWriter json, string part, Route route)
    {
        json.WriteString("part", part);
        Reachable(json, route.Reachability);
        if (route.Why is { } why) json.WriteString("why", why.Text);
        json.WriteString("cost", Word.Of(route.Query.Cost));
        Costs(json, route.Steps, route.Operations, route.Seconds);
        json.WriteBoolean("optimal", route.IsOptimal);
        json.Exact("lowerBound", route.LowerBound);
        json.Words("sequence", route.Way?.Operations ?? []);
        json.Words("tools", route.Way?.Tools ?? []);
        if (!route.AtRisk.IsEmpty) json.Words("atRisk", route.AtRisk);
        if (!route.Damages.IsEmpty) json.Words("damages", route.Damages);
        if (!route.Recorded.IsEmpty) Recorded(json, route.Recorded);
    }

    static void Reachable(Utf8JsonWriter json, Reachability reachability)
    {
        if (reachability == Reachability.Unknown) json.WriteNull("reachable");
        else json.WriteBoolean("reachable", reachability == Reachability.Reachable);
    }

    static void Costs(Utf8JsonWriter json, Interval? steps, int? operations, Interval? seconds)
    {
        json.Amount("steps", steps);
        json.Exact("operations", operations);
        json.Amount("seconds", seconds);
    }

    static void Recorded(Utf8JsonWriter json, ImmutableArray<RecordedWay> ways)
    {
        json.WriteStartArray("recorded");
        foreach (var (sequence, way) in ways)
        {
            json.WriteStartObject();
            json.WriteString("sequence", sequence.Id);
            json.WriteString("by", Word.Of(sequence.By));
            Costs(json, way.Steps, way.Stops.Length, way.Seconds);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    static void Classes(Utf8JsonWriter json, RepairClasses classes)
    {
        json.WriteStartObject("classes");
        foreach (var (aspect, letters) in classes.All)
        {
            if (letters is { } known) json.WriteString(aspect.Name, known.ToString());
            else json.WriteNull(aspect.Name);
        }
        json.WriteEndObject();
    }
}
