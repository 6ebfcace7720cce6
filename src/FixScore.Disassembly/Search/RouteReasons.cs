using System.Collections.Immutable;
using FixScore.Disassembly.Model;
using FixScore.Records;

namespace FixScore.Disassembly.Search;

/// <summary>Why there is no route, or none is known.</summary>
static class RouteReasons
{
    public const string TooMuchWork = "route.too-much-work";
    public const string DamageNotFound = "route.damage-open";

    public static Reason ListsUnknown(TeardownCase source, Part part) => Reason.Of(
        "route.lists-unknown", "The record has no list of {list}, so nobody knows the way to '{part}'.", [source.At(part)],
        ("list", source.Record.Joints.IsRecorded ? "operations" : "joints"), ("part", part.Id));

    public static Reason NotDescribed(TeardownCase source, Part part) => Reason.Of(
        "route.not-described", "No joint and no operation names '{part}'.", [source.At(part)], ("part", part.Id));

    public static Reason NothingUndoes(TeardownCase source, Part part, ImmutableArray<Joint> joints) => Reason.Of(
        "route.no-operation", joints.Length == 1 ? "No operation undoes {joints}, which holds '{part}'." : "No operation undoes {joints}, which hold '{part}'.",
        joints.Select(source.At), ("joints", Listed(joints.Select(joint => joint.Id))), ("part", part.Id));

    public static Reason NotPossible(TeardownCase source, Part part) => Reason.Of(
        "route.not-possible", "The assessor found that '{part}' cannot be reached.", [source.At(part)], ("part", part.Id));

    public static Reason OnlyDamage(TeardownCase source, RouteQuery query, ImmutableArray<string> damages) => Reason.Of(
        "route.only-damage", "{part} can be freed only by damaging {damages}.", Parts(source, query), ("part", Named(query)), ("damages", Listed(damages)));

    public static Reason NoWay(TeardownCase source, RouteQuery query, ImmutableArray<Want> missing) => missing.IsEmpty
        ? Reason.Of("route.no-way", "No sequence of operations frees {part}: what is needed waits for itself, or what must follow at once cannot.", Parts(source, query), ("part", Named(query)))
        : Reason.Of("route.no-way", "No sequence of operations frees {part}: {missing}.", Parts(source, query), ("part", Named(query)), ("missing", string.Join("; ", missing.Take(3).Select(WantText.Never))));

    public static Reason TooMuch(TeardownCase source, RouteQuery query) => Reason.Of(
        TooMuchWork, "No route to {part} was found among {effort} states; whether there is one is open.", Parts(source, query), ("part", Named(query)), ("effort", query.Effort));

    public static Reason DamageOpen(TeardownCase source, RouteQuery query) => Reason.Of(
        DamageNotFound, "{part} cannot be freed without damage; no way with damage was found among {effort} states, and whether there is one is open.",
        Parts(source, query), ("part", Named(query)), ("effort", query.Effort));

    static Pointer[] Parts(TeardownCase source, RouteQuery query) => [.. source.Record.Parts.Where(part => query.Parts.Contains(part.Id)).Select(source.At)];

    static string Named(RouteQuery query) => Listed(query.Parts);

    static string Listed(IEnumerable<string> ids) => string.Join(", ", ids.Select(id => $"'{id}'"));
}
