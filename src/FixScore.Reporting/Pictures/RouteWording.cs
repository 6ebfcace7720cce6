using System.Collections.Immutable;
using System.Globalization;
using FixScore.Disassembly;
using FixScore.Records;
using FixScore.Reporting.Sheet;

namespace FixScore.Reporting.Pictures;

/// <summary>A route in words: what it costs, with which tools, operation by operation.</summary>
sealed class RouteWording(TeardownRecord record, CultureInfo culture)
{
    const int SecondsInAMinute = 60;

    readonly RecordTerms terms = new(record, culture);
    readonly Shown shown = new(culture);

    public string Title(RouteTarget target) => $"To {terms.Part(target.Part.Id)}";

    public IEnumerable<string> Lines(RouteTarget target)
    {
        if (target.Route is not { Reachability: Reachability.Reachable, Way: { } way, Steps: { } steps })
        {
            yield return $"{(target.Route.Reachability == Reachability.Unknown ? "Not known" : "Not free without damage")}: {Why(target.Route)}";
            yield break;
        }
        yield return $"{Counted(steps, "step")}, {Counted(way.Stops.Length, "operation")}, {Time(way.Seconds)}; {Tools(way)}{(target.Route.IsOptimal ? "" : ". Best found, a shorter one is not ruled out")}.";
        yield return string.Join(";  ", way.Stops.Select((stop, index) => $"{terms.Number(index + 1)} {Operation(stop)}")) + ".";
    }

    /// <summary>What can hurt on the way. A battery is a hazard to whoever opens the device for another part, too.</summary>
    public ImmutableArray<Hazard> Hazards(RouteTarget target)
    {
        if (target.Route is not { Reachability: Reachability.Reachable, Way: { } way }) return [];
        var touched = SheetHazards.Touched(record, [.. way.Stops.Select((stop, index) => new SheetOperation(index + 1, stop, false))], [target.Part.Id]);
        return [.. touched.Parts.SelectMany(part => part.Role == Roles.Battery ? part.Hazards.Append(Hazard.LithiumCell) : part.Hazards)
            .Concat(touched.Operations.SelectMany(operation => operation.Hazards)).Distinct().Order()];
    }

    string Why(Route route) => route.Why is { } why ? RecordTerms.Sentence(why.ToString(culture)) : "no reason is known.";

    string Tools(Way way)
    {
        var unknown = way.Stops.Any(stop => !stop.Tools.IsRecorded) ? ["tools of some operations not recorded"] : Array.Empty<string>();
        string[] all = [.. way.Tools.Select(id => RecordTerms.Name(record.Tools.First(tool => tool.Id == id).Name)), .. unknown];
        return all.Length == 0 ? "by hand" : $"with {string.Join(", ", all)}";
    }

    string Operation(Stop stop)
    {
        var undone = stop.Undone.IsEmpty ? "" : $" ({string.Join(", ", record.Joints.Where(joint => stop.Undone.Contains(joint.Id)).Select(terms.JointWords))})";
        var taken = stop.Taken.IsEmpty ? "" : $", {(stop.Operation.Removes.IsEmpty ? "aside" : "out")}: {string.Join(", ", stop.Taken)}";
        return $"{RecordTerms.Plainly(stop.Operation.Action)}{undone}{taken}";
    }

    // Minutes with one decimal; what is shorter than a minute stays in seconds.
    string Time(Interval? seconds) => seconds switch
    {
        null => "time not recorded",
        { High: < SecondsInAMinute } known => $"{shown.Points(known)} s",
        { } known => $"{shown.Points(new Ends(known.Low / SecondsInAMinute, known.High / SecondsInAMinute))} min",
    };

    string Counted(Interval count, string noun) => $"{shown.Points(count)} {noun}{(count == 1 ? "" : "s")}";
}
