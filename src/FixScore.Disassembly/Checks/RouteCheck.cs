using FixScore.Disassembly.Model;
using FixScore.Disassembly.Search;
using FixScore.Records;

namespace FixScore.Disassembly;

/// <summary>Faults that show only when routes are followed.</summary>
/// <remarks>
/// Errors: a recorded sequence that is impossible. Warnings: an operation that can never be done, a part that nothing frees
/// although operations are recorded. An operation that must come directly after another counts as possible with it.
/// </remarks>
public sealed class RouteCheck : IRecordCheck
{
    /// <inheritdoc/>
    public string Id => "routes-are-possible";

    /// <inheritdoc/>
    public IEnumerable<Problem> Check(TeardownCase source)
    {
        var teardown = source.Derive<Teardown>();
        var possible = teardown.Possible(_ => false);
        return Sequences(source, teardown)
            .Concat(Enumerable.Range(0, teardown.Works.Length).Where(work => !possible.Has(work)).Select(work => NeverDone(source, teardown, work, possible)))
            .Concat(teardown.Works.IsEmpty || !source.Record.Joints.IsRecorded ? [] : Held(source, teardown, possible));
    }

    static IEnumerable<Problem> Sequences(TeardownCase source, Teardown teardown) =>
        from sequence in source.Record.Sequences
        let fault = SequenceWalk.FaultIn(teardown, sequence, strictly: true)
        where fault is not null
        select SequenceProblems.Of(source, sequence, fault);

    static Problem NeverDone(TeardownCase source, Teardown teardown, int work, Bits possible)
    {
        var operation = teardown.Works[work].Operation;
        return Problem.Of(
            Severity.Warning, source.At(operation), "operation-never-possible",
            "'{operation}' can never be done: {missing}.", "Record what comes before it, or mend its conditions.",
            ("operation", operation.Id), ("missing", Missing(teardown, work, possible)));
    }

    static string Missing(Teardown teardown, int work, Bits possible) =>
        teardown.Lacking(teardown.Works[work].Needs, possible) is [var first, ..] ? WantText.Never(first)
            : $"'{teardown.Works[work].Operation.DirectlyAfter}' is never done directly before it";

    static IEnumerable<Problem> Held(TeardownCase source, Teardown teardown, Bits possible) =>
        from @group in Enumerable.Range(0, teardown.Structure.Groups.Length)
        let parts = teardown.Structure.Groups[@group].Parts
        where !teardown.Holds(teardown.Freed(@group), possible) && !parts.Any(part => part.Reach.Is(Records.Reach.NotPossible))
        select Problem.Of(
            Severity.Warning, source.At(parts[0]), "part-never-free",
            "Nothing frees '{part}': {missing}.", "Record the operation, or say that the part cannot be reached with 'reach': 'not-possible'.",
            ("part", parts[0].Id), ("missing", WantText.Never(teardown.Lacking(teardown.Freed(@group), possible)[0])));
}
