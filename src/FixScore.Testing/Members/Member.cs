using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

/// <summary>A record that lacks something, and the place it lacks it at.</summary>
/// <param name="What">A pointer, or a path for all places at once.</param>
/// <param name="Record">The record without it.</param>
readonly record struct Deletion(string What, TeardownRecord Record);

/// <summary>A member of the record format, such as <c>joints[].screw.drive</c>.</summary>
/// <param name="Path">Its path; <c>[]</c> stands for every index.</param>
/// <param name="Existing">Where a record has it.</param>
/// <param name="Delete">The record without it, for each place and for all at once; <c>null</c> for a member that cannot be unknown.</param>
sealed record Member(
    string Path, Func<TeardownRecord, ImmutableArray<Pointer>> Existing, Func<TeardownRecord, IEnumerable<Deletion>>? Delete = null)
{
    /// <summary>The record without it, for each place and for all at once; none for a member that cannot be unknown.</summary>
    public IEnumerable<Deletion> Deletions(TeardownRecord record) => Delete?.Invoke(record) ?? [];
}
