using FixScore.Disassembly;

namespace FixScore.Criteria.Disassembly;

/// <summary>What all criteria of this family say about the way to a part.</summary>
static class WayReasons
{
    /// <summary>The answer when no way can be judged; <c>null</c> when one can.</summary>
    public static Outcome? Barred(PartContext context, Route route) => route.Reachability switch
    {
        Reachability.Unknown => Outcome.Unknown([.. Missing(context, route)]),
        Reachability.Unreachable => Outcome.Scored(context.Scale.Min, [Unreachable(context), .. Of(route.Why)]),
        _ => null,
    };

    /// <summary>Which way is judged, where that is not plain.</summary>
    public static IEnumerable<Reason> Of(PartContext context, JudgedWays judged)
    {
        if (JudgedWays.Author(context.Get(WayOptions.Route)) is { } author && judged.Sequences.IsEmpty)
            yield return Reason.Of(
                "no-sequence", "No way to part {part} is recorded by the {author}; the shortest is judged.", [context.Case.At(context.Part)],
                ("part", context.Part.Id), ("author", Word.Of(author)));
        if (!judged.IsProven)
            yield return Reason.Of(
                "not-proven", "No way to part {part} is shorter than {lowerBound}; whether one is shorter than {found} was not settled.",
                [context.Case.At(context.Part)],
                ("part", context.Part.Id), ("lowerBound", judged.Route.LowerBound ?? 0), ("found", judged.Length.High));
    }

    /// <summary>Which operations are judged.</summary>
    public static Reason Of(PartContext context, JudgedWays judged, JudgedWork work) => Reason.Of(
        "judged-work", "Judged for part {part}: {operations}, on the {route} way, from {from} on.",
        [.. work.Stops.Select(stop => context.Case.At(stop.Operation))],
        ("part", context.Part.Id), ("operations", Ids(work.Stops)), ("route", NameOf(context, judged)),
        ("from", work is { Previous: { } previous, PreviousPart: { } part } ? $"the removal of {part.Id} in {previous.Operation.Id}" : "the start"));

    /// <summary>The word of the way that is judged in the end.</summary>
    public static string NameOf(PartContext context, JudgedWays judged) =>
        Word.Of(judged.Sequences.IsEmpty ? JudgedRoute.Shortest : context.Get(WayOptions.Route));

    public static string Ids(IEnumerable<Stop> stops) => Joined(stops.Select(stop => stop.Operation.Id));

    public static string Joined(IEnumerable<string> ids) => string.Join(", ", ids) is { Length: > 0 } all ? all : "none";

    static Reason Unreachable(PartContext context) => Reason.Of(
        "unreachable", "Part {part} cannot be freed without damage, which is the lowest of the scale.", [context.Case.At(context.Part)],
        ("part", context.Part.Id)) with { Points = context.Scale.Min };

    static IEnumerable<Reason> Of(Reason? why) => why is null ? [] : [why];

    static IEnumerable<Missing> Missing(PartContext context, Route route) => route.Why is { Pointers.IsEmpty: false } why
        ? why.Pointers.Select(pointer => new Missing(pointer, why.Text))
        : [new(context.Case.At(context.Part), "operations that free it")];
}
