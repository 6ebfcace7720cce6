using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Requirements.Judging;

/// <summary>Answers to the question whether a part comes out in a way that a law allows.</summary>
static class WayAnswers
{
    /// <summary>Not met when no way keeps the rule, or when only damage frees the part.</summary>
    public static Answer To(TeardownCase source, Part part, ImmutableArray<Aspect> rule, CancellationToken cancellation)
    {
        var ways = Ways.To(source, part.Id, rule, cancellation);
        if (ways.Reachability == Reachability.Unknown) return Answer.Unknown(Unknown(source, part));
        if (ways.Reachability == Reachability.Unreachable) return Answer.Of(false, OnlyDamaged(source, part));
        return Answer.Of(ways.Exists, ways.Exists switch
        {
            true => Allowed(source, part, ways.Operations),
            false => Told(source, part, rule, ways.Operations, false, "not-allowed", "No way to {part} is within the rule; on the shortest: {operations}."),
            _ => Told(source, part, rule, ways.Operations, null, "unknown", "Whether a way to {part} is within the rule depends on what is not known: {operations}."),
        });
    }

    public static Reason Unknown(TeardownCase source, Part part) => Reason.Of(
        "way-unknown", "The record does not tell how {part} is freed{why}.", At(source, part), ("part", Shown.Of(part)), ("why", WhyOf(source, part)));

    static Reason OnlyDamaged(TeardownCase source, Part part) => Reason.Of(
        "no-way-undamaged", "{part} cannot be freed without damage{why}.", At(source, part), ("part", Shown.Of(part)), ("why", WhyOf(source, part)));

    static Reason Allowed(TeardownCase source, Part part, ImmutableArray<Operation> operations) => Reason.Of(
        "way-allowed", "{part} comes out by {operations}, all within the rule.",
        [source.At(part), .. operations.Select(source.At)],
        ("part", Shown.Of(part)), ("operations", operations.IsEmpty ? "lifting it" : string.Join(", ", operations.Select(operation => operation.Id))));

    static Reason Told(
        TeardownCase source, Part part, ImmutableArray<Aspect> rule, ImmutableArray<Operation> operations, bool? answer, string suffix, string template)
    {
        var broken = operations.SelectMany(operation => rule.Where(aspect => aspect.Keeps(operation) == answer).Take(1), (operation, aspect) => (operation, aspect)).ToArray();
        return Reason.Of(
            broken.Length == 0 ? $"way-{suffix}" : $"{broken[0].aspect.Code}-{suffix}", template,
            [source.At(part), .. broken.Select(each => source.At(each.operation))],
            ("part", Shown.Of(part)), ("operations", string.Join(", ", broken.Select(each => $"{each.operation.Id} ({each.aspect.Seen(each.operation)})"))));
    }

    static IEnumerable<Pointer> At(TeardownCase source, Part part) => [source.At(part), .. source.RouteTo(part.Id).Why?.Pointers ?? []];

    static string WhyOf(TeardownCase source, Part part) => source.RouteTo(part.Id).Why is { } why ? $" ({why.Text.TrimEnd('.')})" : "";
}
