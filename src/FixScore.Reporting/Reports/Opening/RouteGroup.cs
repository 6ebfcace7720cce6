using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Reporting.Reports;

/// <summary>Parts that are replaced together, and the one route to them.</summary>
/// <param name="Asked">Those of the group that the report is about, in the order of the record.</param>
/// <param name="Others">Ids of the others in the group.</param>
/// <param name="Route">The shortest route in steps.</param>
sealed record RouteGroup(ImmutableArray<Part> Asked, ImmutableArray<string> Others, Route Route)
{
    /// <summary>The groups of some parts, in the order in which the parts stand.</summary>
    public static ImmutableArray<RouteGroup> Of(TeardownCase source, ImmutableArray<Part> parts)
    {
        var groups = source.Derive<PartGroups>();
        return [.. parts.GroupBy(part => groups.Of(part.Id)).Select(alike => new RouteGroup(
            [.. alike], [.. alike.Key.Parts.Select(part => part.Id).Except(alike.Select(part => part.Id))], source.RouteTo(alike.First().Id)))];
    }

    public bool IsReachable => Route.Reachability == Reachability.Reachable;
}
