using System.Collections.Immutable;
using FixScore.Disassembly;

namespace FixScore.Cli.Commands.Routing.Classes;

/// <summary>Classes of a part, by EN 45554: the worst along its route, and who can get the spare part and the instructions.</summary>
/// <param name="All">Each aspect with its class, a range where something is not known; <c>null</c> when nothing is known of it.</param>
sealed record RepairClasses(ImmutableArray<(ClassAspect Aspect, LetterRange? Letters)> All)
{
    public static RepairClasses Of(TeardownCase source, Route route)
    {
        var (along, supply) = (new WayClasses(source, route), new SupplyClasses(source, route.Query.Parts[0]));
        return new([.. ClassAspect.All.Select(aspect => (aspect, along.Of(aspect) ?? supply.Of(aspect)))]);
    }
}
