using System.Collections.Immutable;
using FixScore.Analysis.Comparing;

namespace FixScore.Analysis.Generations;

/// <summary>The difference of two scores by one profile, shared out among its lines exactly: deltas add up to it, end by end.</summary>
/// <remarks>
/// <para>Lines are the profile's leaves, or nodes that it spreads over parts. Where everything above them is a weighted arithmetic
/// mean or a sum, the delta is the difference of contributions. Otherwise it is the Shapley value over the lines that changed
/// (L. S. Shapley, A Value for n-Person Games, 1953): the mean, over all orders in which they can change one after another, of
/// what each adds. With more than 12 changed lines those below one node change together, at the lowest depth that leaves 12.</para>
/// <para>What gates take away is a line of its own. Low and high ends are shared out each by itself. Immutable and thread safe.</para>
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
        var contributed = Contributed(before, after, paths).ToArray();
        var additive = paths.All(path => IsLinear(before, path) && IsLinear(after, path)) && AddUp(contributed, before.BeforeGates, after.BeforeGates);
        var deltas = additive ? contributed : Shapley.Of(old, @new, profile, paths, cancellation);
        var newIds = RecordChanges.Renamed(old.Record, @new.Record).ToDictionary(each => each.Value, each => each.Key, StringComparer.Ordinal);
        return new(before.Total, after.Total, additive, [.. from delta in deltas.Append(OfGates(before, after))
                                                            where delta.Low != 0m || delta.High != 0m
                                                            select delta.Node == Gates ? delta : delta with { Lines = LineChanges.Below(delta.Node, before, after, newIds) }]);
    }

    static bool IsLinear(ScoreDocument score, string path) => Line(score, path) is { } line && (line.Contribution is not null || line.Share == 0m);

    // They do not where one total is made of nothing, because all lines were left out.
    static bool AddUp(NodeDelta[] deltas, Interval old, Interval @new) =>
        deltas.Sum(delta => delta.Low) == @new.Low - old.Low && deltas.Sum(delta => delta.High) == @new.High - old.High;

    static IEnumerable<NodeDelta> Contributed(ScoreDocument before, ScoreDocument after, ImmutableArray<string> paths) => paths.Select(path =>
    {
        var (old, @new) = (Line(before, path), Line(after, path));
        return new NodeDelta(path, @new.Title, (@new.Contribution?.Low ?? 0m) - (old.Contribution?.Low ?? 0m), (@new.Contribution?.High ?? 0m) - (old.Contribution?.High ?? 0m));
    });

    static ScoreNode Line(ScoreDocument score, string path) => score.Nodes.First(node => node.Path == path);

    static NodeDelta OfGates(ScoreDocument before, ScoreDocument after) =>
        new(Gates, "Caps by gates", Taken(after, score => score.Low) - Taken(before, score => score.Low), Taken(after, score => score.High) - Taken(before, score => score.High))
        {
            Lines = LineChanges.OfGates(before.Gates, after.Gates),
        };

    static decimal Taken(ScoreDocument score, Func<Interval, decimal> end) => end(score.Total) - end(score.BeforeGates);
}
