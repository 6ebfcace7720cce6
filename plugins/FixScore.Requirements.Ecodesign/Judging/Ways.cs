using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Requirements.Judging;

/// <summary>Whether a part can be freed by operations that keep all aspects of a rule.</summary>
/// <param name="Reachability">Whether the part can be freed without damage at all.</param>
/// <param name="Exists">Whether a way exists that keeps the rule; <c>null</c> when what is unknown of operations decides it.</param>
/// <param name="Operations">When it exists, the way; else, on the shortest way left, the operations that break the rule or may break it.</param>
sealed record Ways(Reachability Reachability, bool? Exists, ImmutableArray<Operation> Operations)
{
    /// <summary>Looks at all ways, not at the shortest alone: one is enough, and none may be left when what is unknown is taken as fitting.</summary>
    public static Ways To(TeardownCase source, string part, ImmutableArray<Aspect> rule, CancellationToken cancellation)
    {
        var route = source.RouteTo(part);
        if (route.Reachability != Reachability.Reachable) return new(route.Reachability, null, []);
        var way = OperationsOf(route);
        if (way.All(operation => Keeps(rule, operation) == true)) return new(route.Reachability, true, way);
        var maybe = Without(operation => Keeps(rule, operation) == false);
        if (maybe.Reachability == Reachability.Unreachable)
            return new(route.Reachability, false, [.. way.Where(operation => Keeps(rule, operation) == false)]);
        var sure = Without(operation => Keeps(rule, operation) != true);
        return sure.Reachability == Reachability.Reachable
            ? new(route.Reachability, true, OperationsOf(sure))
            : new(route.Reachability, null, [.. OperationsOf(maybe.Way is null ? route : maybe).Where(operation => Keeps(rule, operation) is null)]);

        Route Without(Func<Operation, bool> barred) => new NarrowedCase(source, barred, cancellation).RouteTo(part, RouteCost.Operations);

        ImmutableArray<Operation> OperationsOf(Route found) => [.. found.Way!.Operations.Select(id => source.Record.Operations.First(each => each.Id == id))];
    }

    static bool? Keeps(ImmutableArray<Aspect> rule, Operation operation) => Known.All(rule.Select(aspect => aspect.Keeps(operation)));
}
