using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Safety;

/// <summary>What <see cref="HazardExposureCriterion"/> says.</summary>
sealed class HazardExposureReasons(PartContext context)
{
    readonly TeardownCase source = context.Case;
    readonly Part part = context.Part;

    public ImmutableArray<Reason> Unreachable(Route route, decimal points) =>
    [
        Reason.Of("unreachable", "No recorded route frees part {part} without damage.", [source.At(part)], ("part", part.Id)) with { Points = points },
        .. route.Why is { } why ? [why] : ImmutableArray<Reason>.Empty,
    ];

    public Missing RouteUnknown(Route route) => new(
        route.Why is { Pointers: [var at, ..] } ? at : source.At(part), route.Why?.Text ?? "operations that free the part");

    public Reason Count(HazardExposureFacts facts, Interval count, Interval points) => Reason.Of(
        "hazard-count", "Different hazards met on the way to part {part}: {count}.", [source.At(part), .. facts.Met.Select(met => source.At(met.By)).Distinct()],
        ("part", part.Id), ("count", count)) with { Points = points };

    /// <summary>One reason for each hazard, then what is open.</summary>
    /// <param name="facts">The hazards.</param>
    /// <param name="pointsOf">Points of a hazard; <c>null</c> where they are counted.</param>
    public IEnumerable<Reason> Of(HazardExposureFacts facts, Func<ImmutableArray<string>, Interval?> pointsOf)
    {
        foreach (var alike in facts.Met.GroupBy(met => string.Join(" or ", met.Words), StringComparer.Ordinal))
            yield return Hazard(alike.Key, [.. alike]) with { Points = pointsOf(alike.First().Words) };
        if (facts.Met.IsEmpty)
            yield return Reason.Of(
                "no-hazards", "No recorded hazard is met on the shortest route to part {part}.", [source.At(part), .. AtWay(facts)], ("part", part.Id))
                with { Points = pointsOf([HazardWords.None]) };
        if (!facts.Unlisted.IsEmpty) yield return Unlisted(facts) with { Points = Widens ? pointsOf(HazardWords.Any) : null };
        if (facts.IsOpen) yield return Open(facts) with { Points = pointsOf(HazardWords.Any) };
    }

    public IEnumerable<Missing> Missing(HazardExposureFacts facts) =>
    [
        .. Widens ? facts.Unlisted.Select(entry => new Missing(source.At(entry), "hazards")) : [],
        .. facts.IsOpen ? WithoutTools(facts).Select(operation => new Missing(source.At(operation), "tools")) : [],
    ];

    bool Widens => context.Get(HazardExposureOptions.HazardsUnknown) == WhenHazardsUnknown.Widen;

    Reason Hazard(string words, ImmutableArray<Exposure> met) => Reason.Of(
        "hazard", "On the way to part {part} there is {hazard}: {by}.", met.Select(each => source.At(each.By)),
        ("part", part.Id), ("hazard", words), ("by", string.Join(", ", met.Select(each => each.By.Id))));

    Reason Unlisted(HazardExposureFacts facts) => Reason.Of(
        "hazards-not-recorded", Widens ? "Hazards were not recorded for {entries}; there may be any." : "Hazards were not recorded for {entries}; taken as none.",
        facts.Unlisted.Select(source.At), ("entries", string.Join(", ", facts.Unlisted.Select(entry => entry.Id))));

    Reason Open(HazardExposureFacts facts) => Reason.Of(
        "route-open",
        facts.Route.IsOptimal
            ? "Some tools are not known, so neither is for sure which route to part {part} is the shortest, nor what is met on it."
            : "The search met its limit, so neither is for sure which route to part {part} is the shortest, nor what is met on it.",
        [source.At(part), .. AtWay(facts)], ("part", part.Id));

    IEnumerable<Pointer> AtWay(HazardExposureFacts facts) => facts.Route.Way!.Stops.Select(stop => source.At(stop.Operation));

    static IEnumerable<Operation> WithoutTools(HazardExposureFacts facts) => facts.Route.Ways.SelectMany(way => way.Stops)
        .Where(stop => !stop.Tools.IsRecorded).Select(stop => stop.Operation).DistinctBy(operation => operation.Id, StringComparer.Ordinal);
}
