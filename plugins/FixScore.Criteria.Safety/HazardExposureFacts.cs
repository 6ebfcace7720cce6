using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Safety;

/// <summary>The hazards met on the way to a part.</summary>
/// <param name="Route">The route; reachable.</param>
/// <param name="Met">What is surely met, in the order of the way; then the part's own group.</param>
/// <param name="Unlisted">Operations and parts met whose hazards were not recorded.</param>
sealed record HazardExposureFacts(Route Route, ImmutableArray<Exposure> Met, ImmutableArray<NamedEntry> Unlisted)
{
    /// <summary>Whether another route may be the shortest: a search that met its limit, or tools that are not known.</summary>
    public bool IsOpen => !IsSettled(Route);

    /// <summary>Hazards surely met, each once: a solvent is one hazard unless one of its two is met besides.</summary>
    public Interval Count(bool listsWiden)
    {
        string[] certain = [.. Met.Where(met => met.Words.Length == 1).Select(met => met.Words[0]).Where(HazardWords.Hazards.Contains).Distinct(StringComparer.Ordinal)];
        ImmutableArray<string>[] either = [.. Met.Where(met => met.Words.Length > 1).Select(met => met.Words)];
        var least = certain.Length + (either.Any(words => !words.Any(certain.Contains)) ? 1 : 0);
        var most = certain.Union(either.SelectMany(words => words), StringComparer.Ordinal).Count();
        return new(least, IsOpen || (listsWiden && !Unlisted.IsEmpty) ? HazardWords.Hazards.Length : most);
    }

    public static HazardExposureFacts Of(TeardownCase source, Part part, Route route)
    {
        var group = source.Derive<PartGroups>().Of(part.Id).Parts;
        var own = group.SelectMany(each => Exposure.Listed(each.Hazards, each));
        // With an open route only what is handled in the end is sure.
        if (!IsSettled(route)) return new(route, [.. own], UnlistedOf(group));
        var onWay = new HazardsOnWay(source.Record, route.Way!);
        return new(
            route, [.. onWay.All.Concat(own).DistinctBy(met => (string.Join(' ', met.Words), met.By.Id))],
            [.. route.Way!.Stops.Select(stop => stop.Operation).Where(operation => !operation.Hazards.IsRecorded), .. UnlistedOf(onWay.Parts.Union(group))]);
    }

    static bool IsSettled(Route route) => route.IsOptimal && route.Ways.Count() == 1 && route.Way!.Stops.All(stop => stop.Tools.IsRecorded);

    static ImmutableArray<NamedEntry> UnlistedOf(IEnumerable<Part> parts) => [.. parts.Where(part => !part.Hazards.IsRecorded)];
}
