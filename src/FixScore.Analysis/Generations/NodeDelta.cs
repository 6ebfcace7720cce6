using System.Collections.Immutable;

namespace FixScore.Analysis.Generations;

/// <summary>What one line of the profile did to the difference of two scores. Immutable and thread safe.</summary>
/// <param name="Node">Path of the line, or <c>gates</c> for what caps do.</param>
/// <param name="Title">Its title.</param>
/// <param name="Low">What it did to the low end, points; above 0 is better.</param>
/// <param name="High">What it did to the high end. Not the ends of an interval: each end is a sum of its own, and this may be less than <paramref name="Low"/>.</param>
public sealed record NodeDelta(string Node, string Title, decimal Low, decimal High)
{
    /// <summary>What criteria said otherwise of, below the line: those of the greatest effect first. For gates, those that closed in one score only, in their order.</summary>
    public ImmutableArray<LineChange> Lines { get; init; } = [];
}

/// <summary>Something that two scores say otherwise of. Immutable and thread safe.</summary>
/// <param name="Path">Path of the line; the id of a gate.</param>
/// <param name="Title">Its title; what a gate says.</param>
/// <param name="Old">Its points before, or the cap of the gate; <c>null</c> where it was left out or there was none.</param>
/// <param name="New">The same now.</param>
/// <param name="Before">The reasons given before that are not given now.</param>
/// <param name="Now">The reasons given now that were not given before.</param>
public sealed record LineChange(string Path, string Title, Interval? Old, Interval? New, ImmutableArray<ScoreReason> Before, ImmutableArray<ScoreReason> Now);
