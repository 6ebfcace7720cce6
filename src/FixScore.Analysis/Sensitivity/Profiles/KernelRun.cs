using System.Collections.Immutable;
using FixScore.Scoring;

namespace FixScore.Analysis.Sensitivity.Profiles;

/// <summary>What the kernel says of a record under one way through the choices. Immutable and thread safe.</summary>
/// <param name="Lines">Middle of each line, as share of its scale; <c>null</c> where it was left out.</param>
/// <param name="Closed">For each gate whether it closes, whatever open observations turn out to be.</param>
sealed record KernelRun(ImmutableArray<decimal?> Lines, ImmutableArray<bool> Closed)
{
    // A criterion that fails makes its leaf the whole scale.
    public static KernelRun Of(TeardownCase source, Profile profile, ProfileChoices choices, CancellationToken cancellation)
    {
        var result = new Result(profile, new Evaluation(profile, source, cancellation).Run());
        var closed = result.Closed.Where(gate => gate.Ends == GateEnds.Both).Select(gate => gate.Id).ToArray();
        return new(
            [.. choices.Lines.Ids.Select(id => result.Root.Children.Find(row => row.Node.Id == id)).Select(Value)],
            [.. choices.Gates.Select(gate => closed.Contains(gate.Id, StringComparer.Ordinal))]);
    }

    static decimal? Value(Row? row) => row is { State: RowState.Counts, GateOnly: false } ? ProfileLines.Share(row.Value.Middle(), row.Node.Scale) : null;
}
