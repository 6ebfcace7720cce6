using System.Collections.Immutable;
using FixScore.Analysis.Generations;
using FixScore.Records;

namespace FixScore.Cli.Commands.Diff;

/// <summary>What is different between two records.</summary>
/// <param name="Old">The old record.</param>
/// <param name="New">The new record.</param>
/// <param name="Changes">What the records say otherwise of the device.</param>
/// <param name="Proofs">What their swap trials prove otherwise.</param>
/// <param name="Profile">The rules; <c>null</c> when none were asked.</param>
/// <param name="Attribution">What the changes did to the score; <c>null</c> without rules.</param>
sealed record Difference(
    TeardownRecord Old, TeardownRecord New, ImmutableArray<RecordChange> Changes, ImmutableArray<ProofChange> Proofs, Profile? Profile, ScoreAttribution? Attribution)
{
    public bool IsNone => Changes.IsEmpty && Proofs.IsEmpty && Attribution is not { Deltas.IsEmpty: false };

    public static Difference Between(RecordDocument old, RecordDocument @new, Profile? profile, CancellationToken cancellation) => new(
        old.Record, @new.Record, RecordChanges.Between(old.Record, @new.Record),
        ProofChange.Between(new(old.Record, cancellation), new(@new.Record, cancellation)),
        profile, profile is null ? null : ScoreAttribution.Of(old, @new, profile, cancellation));
}
