using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Reporting.Pictures;

/// <summary>The shortest route to every part of a record.</summary>
sealed class FoundParts
{
    // What all searches together may open; a record of hundreds of parts would else take its time for layers alone.
    const int EffortInAll = 1_000_000;

    readonly ImmutableDictionary<string, Route> routes;

    public FoundParts(TeardownCase source, RouteQuery query)
    {
        var targets = query.Parts;
        var rest = query with { Effort = Math.Min(query.Effort, Math.Max(1, EffortInAll / source.Record.Parts.Count)) };
        routes = source.Record.Parts.ToImmutableDictionary(
            part => part.Id,
            part => source.Derive<Route, RouteQuery>((targets.Contains(part.Id) ? query : rest) with { Parts = [part.Id] }), StringComparer.Ordinal);
    }

    public Route To(string part) => routes[part];

    /// <summary>Where a part lies: parts of the same key share a layer; keys go inwards.</summary>
    public (int State, decimal High, decimal Low) Depth(Part part) => To(part.Id) switch
    {
        { Reachability: Reachability.Reachable, Steps: { } steps } => (0, steps.High, steps.Low),
        { Reachability: Reachability.Unreachable } => (1, 0, 0),
        _ => (2, 0, 0),
    };
}
