using System.Collections.Immutable;
using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Reporting.Sheet;

/// <summary>Functions to check before and after: those of the parts that the work moves, and whether the device starts.</summary>
static class SheetChecks
{
    static readonly ImmutableArray<string> OnlyAfter =
    [
        "no screw and no part is left over",
        "nothing rattles, every edge is closed, no cable is pinched",
        "the first charge is watched: no heat beyond the usual, no smell, no swelling",
        "messages about parts that the device does not accept, noted",
    ];

    /// <summary>By the roles of the parts moved, in the order of the list of functions.</summary>
    public static ImmutableArray<string> Before(IEnumerable<Part> moved)
    {
        var roles = moved.Select(part => part.Role).Append(Roles.Mainboard).ToHashSet(StringComparer.Ordinal);
        return [.. PartFunctions.All.Where(function => roles.Contains(function.Role)).Select(function => $"{function.Role}, {function.Title}: {function.How}")];
    }

    public static ImmutableArray<string> After(IEnumerable<Part> moved) => [.. OnlyAfter, .. Before(moved)];
}
