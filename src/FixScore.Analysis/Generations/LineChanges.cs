using System.Collections.Immutable;
using FixScore.Analysis.Comparing;
using FixScore.Numbers;

namespace FixScore.Analysis.Generations;

/// <summary>Puts the lines and gates of two scores side by side.</summary>
static class LineChanges
{
    static readonly Dictionary<string, string> Same = [];

    /// <summary>The lines at or below a path whose points differ, by how much of the total that is.</summary>
    public static ImmutableArray<LineChange> Below(string path, ScoreDocument before, ScoreDocument after, IReadOnlyDictionary<string, string> newIds)
    {
        var (old, @new) = (Judged(path, before, newIds), Judged(path, after, Same));
        return [.. from line in @new.Keys.Union(old.Keys, StringComparer.Ordinal)
                   let was = old.GetValueOrDefault(line)
                   let now = @new.GetValueOrDefault(line)
                   where Points(was) != Points(now)
                   orderby Effect(was, now) descending, line
                   select new LineChange(line, (now ?? was)!.Title, Points(was), Points(now), Reasons(was, now), Reasons(now, was))];
    }

    /// <summary>The gates that closed in one score only.</summary>
    public static ImmutableArray<LineChange> OfGates(ImmutableArray<ScoreGate> before, ImmutableArray<ScoreGate> after) =>
    [
        .. before.Where(gate => !after.Contains(gate)).Select(gate => new LineChange(gate.Id, gate.Reason, gate.Cap, null, [], [])),
        .. after.Where(gate => !before.Contains(gate)).Select(gate => new LineChange(gate.Id, gate.Reason, null, gate.Cap, [], [])),
    ];

    static Dictionary<string, ScoreNode> Judged(string path, ScoreDocument score, IReadOnlyDictionary<string, string> newIds) => ScoreLines.Lowest(score)
        .Where(line => line.Path == path || line.Path.StartsWith(path + "/", StringComparison.Ordinal)).ToDictionary(line => Renamed(line.Path, newIds), StringComparer.Ordinal);

    // A line of a part ends with the part's id.
    static string Renamed(string path, IReadOnlyDictionary<string, string> newIds) => string.Join('/', path.Split('/').Select(id => newIds.GetValueOrDefault(id, id)));

    static Interval? Points(ScoreNode? line) => line is null ? null : ScoreLines.ValueOf(line, false);

    static Rational Effect(ScoreNode? was, ScoreNode? now)
    {
        var moved = Total(now) - Total(was);
        return moved.Sign < 0 ? -moved : moved;
    }

    static Rational Total(ScoreNode? line) => line is null ? 0m : (Rational)line.Share * line.Value.Middle();

    // By text: places in two records are different by nature.
    static ImmutableArray<ScoreReason> Reasons(ScoreNode? of, ScoreNode? without) =>
        of is null ? [] : [.. of.Reasons.Where(reason => without is null || without.Reasons.All(other => other.Text != reason.Text))];
}
