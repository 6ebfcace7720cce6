using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Cli.Commands.Routing;

/// <summary>Routes to parts of one record, in the order asked for.</summary>
/// <param name="Case">The record.</param>
/// <param name="Cost">What they are shortest in.</param>
/// <param name="All">The routes with the part that each leads to.</param>
sealed record FoundRoutes(TeardownCase Case, RouteCost Cost, ImmutableArray<RouteToPart> All)
{
    public static FoundRoutes Of(TeardownCase source, ImmutableArray<Part> parts, RouteQuery query) => new(source, query.Cost,
        [.. parts.Select(part => new RouteToPart(source, part, source.Derive<Route, RouteQuery>(query with { Parts = [part.Id] })))]);
}

/// <summary>A part and the route to it.</summary>
sealed record RouteToPart(TeardownCase Case, Part Part, Route Route)
{
    public bool IsReachable => Route.Reachability == Reachability.Reachable;
}
