namespace FixScore.Disassembly;

/// <summary>Routes of a case, each searched once and shared.</summary>
public static class Routes
{
    /// <summary>The shortest route to a part.</summary>
    /// <exception cref="KeyNotFoundException">No part of the record has this id.</exception>
    public static Route RouteTo(
        this TeardownCase source, string part, RouteCost cost = RouteCost.Steps, FirstTool firstTool = FirstTool.NoChange) =>
        source.Derive<Route, RouteQuery>(new(part, cost, firstTool));

    /// <summary>The shortest way to free several parts in one go, shared work counted once.</summary>
    /// <exception cref="KeyNotFoundException">No part of the record has such an id.</exception>
    /// <exception cref="ArgumentException">No part is asked for.</exception>
    public static Route RouteToAll(
        this TeardownCase source, IEnumerable<string> parts, RouteCost cost = RouteCost.Steps, FirstTool firstTool = FirstTool.NoChange) =>
        source.Derive<Route, RouteQuery>(new([.. parts], cost, firstTool));
}
