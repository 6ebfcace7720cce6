using System.Collections.Immutable;
using FixScore.Analysis.Comparing;

namespace FixScore.Analysis.Generations;

/// <summary>What one line of the profile did to the difference of two scores.</summary>
/// <param name="Node">Path of the line, or <c>gates</c> for what caps do.</param>
/// <param name="Title">Its title.</param>
/// <param name="Low">What it did to the low end, points; above 0 is better.</param>
/// <param name="High">What it did to the high end. Not the ends of an interval: each end is a sum of its own.</param>
public sealed record NodeDelta(string Node, string Title, decimal Low, decimal High);

/// <summary>The difference of two scores by one profile, shared out among its lines exactly: deltas add up to it, end by end.</summary>
/// <remarks>
/// <para>Lines are the profile's leaves, or nodes that it spreads over parts. Where everything above them is a weighted arithmetic
/// mean or a sum, the delta is the difference of contributions. Otherwise it is the Shapley value over the lines that changed
/// (L. S. Shapley, A Value for n-Person Games, 1953): the mean, over all orders in which they can change one after another, of
/// what each adds. With more than 12 changed lines those below one line of the total change together.</para>
/// <para>What gates take away is a line of its own. Immutable and thread safe.</para>
/// </remarks>
/// <param name="Old">The old total.</param>
/// <param name="New">The new total.</param>
/// <param name="IsAdditive">Whether deltas are differences of contributions, and not Shapley values.</param>
/// <param name="Deltas">Lines that changed something, in the order of the profile, gates last.</param>
public sealed record ScoreAttribution(Interval Old, Interval New, bool IsAdditive, ImmutableArray<NodeDelta> Deltas)
{
    /// <summary>The name under which caps by gates stand.</summary>
    public const string Gates = "gates";

    /// <summary>Scores both records and shares out the difference.</summary>
    /// <param name="old">The old record.</param>
    /// <param name="new">The new record.</param>
    /// <param name="profile">The rules.</param>
    /// <param name="cancellation">Cancels the run.</param>
    /// <inheritdoc cref="Scorer.Score" path="/exception"/>
    public static ScoreAttribution Of(RecordDocument old, RecordDocument @new, Profile profile, CancellationToken cancellation = default)
    {
        var (before, after) = (Scorer.Score(old, profile, cancellation: cancellation), Scorer.Score(@new, profile, cancellation: cancellation));
        ImmutableArray<string> paths = [.. ScoreLines.Columns(profile).Where(column => !column.IsGateOnly).Select(column => column.Path)];
        var additive = paths.All(path => IsLinear(before, path) && IsLinear(after, path));
        var deltas = additive ? Contributed(before, after, paths) : Shapley.Of(old, @new, profile, paths, cancellation);
        NodeDelta gates = new(Gates, "Caps by gates", Taken(after, score => score.Low) - Taken(before, score => score.Low), Taken(after, score => score.High) - Taken(before, score => score.High));
        return new(before.Total, after.Total, additive, [.. deltas.Append(gates).Where(delta => delta.Low != 0m || delta.High != 0m)]);
    }

    static bool IsLinear(ScoreDocument score, string path) => Line(score, path) is { } line && (line.Contribution is not null || line.Share == 0m);

    static IEnumerable<NodeDelta> Contributed(ScoreDocument before, ScoreDocument after, ImmutableArray<string> paths) => paths.Select(path =>
    {
        var (old, @new) = (Line(before, path), Line(after, path));
        return new NodeDelta(path, @new.Title, (@new.Contribution?.Low ?? 0m) - (old.Contribution?.Low ?? 0m), (@new.Contribution?.High ?? 0m) - (old.Contribution?.High ?? 0m));
    });

    static ScoreNode Line(ScoreDocument score, string path) => score.Nodes.First(node => node.Path == path);

    static decimal Taken(ScoreDocument score, Func<Interval, decimal> end) => end(score.Total) - end(score.BeforeGates);
}
