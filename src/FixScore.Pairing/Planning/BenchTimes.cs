using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Pairing.Planning;

/// <summary>Seconds of rebuilds from the routes of a record.</summary>
/// <remarks>
/// Both units are opened to all parts that change place, by one shortest route, and closed again: twice the route with its
/// reassembly. A carrier goes along with what rides on it only when both change place; else the rider is taken off first.
/// Times that are ranges count with their middle. Where reassembly has no time it counts like the way in.
/// </remarks>
sealed class BenchTimes(TeardownCase source, IReadOnlyDictionary<string, SwapUnit> units) : IRebuildCosts
{
    const int RouteEffort = 1_500;

    /// <summary>Whether some reassembly had to be taken as long as the way in.</summary>
    public bool AssumesReassembly { get; private set; }

    public decimal? SecondsToExchange(ImmutableArray<string> candidates)
    {
        var route = source.Derive<Route, RouteQuery>(new(PartsToFree(candidates), RouteCost.Seconds, Effort: RouteEffort));
        if (route.Seconds is not { } opening) return null;
        AssumesReassembly |= route.Way!.ReassemblySeconds is null;
        return 2 * (Middle(opening) + Middle(route.Way.ReassemblySeconds ?? opening));
    }

    ImmutableArray<string> PartsToFree(ImmutableArray<string> candidates)
    {
        var moved = candidates.SelectMany(id => units[id].Parts).Select(part => part.Id).ToHashSet(StringComparer.Ordinal);
        var riders = source.Record.Parts.Where(part => !part.Inert && !moved.Contains(part.Id) && RidesOn(part, moved));
        var carried = source.Record.Parts.Where(part => moved.Contains(part.Id) && RidesOn(part, moved)).Select(part => part.Id).ToHashSet(StringComparer.Ordinal);
        var free = source.Record.Parts.Where(part => moved.Contains(part.Id) && !carried.Contains(part.Id)).Concat(riders).Select(part => part.Id).ToHashSet(StringComparer.Ordinal);
        return [.. source.Record.Parts.Select(part => part.Id).Where(free.Contains)];
    }

    bool RidesOn(Part part, HashSet<string> moved)
    {
        for (var on = part.On; on is not null; on = source.Record.Parts.First(each => each.Id == on).On)
            if (moved.Contains(on)) return true;
        return false;
    }

    static decimal Middle(Interval seconds) => (seconds.Low + seconds.High) / 2;
}
