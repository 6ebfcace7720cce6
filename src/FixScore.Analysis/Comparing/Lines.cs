using System.Collections.Immutable;

namespace FixScore.Analysis.Comparing;

/// <summary>A table of devices and of all lines of all profiles.</summary>
static class Lines
{
    public static UnitTable Of(ImmutableArray<ProfileScores> scores)
    {
        var columns = scores.Index().SelectMany(each => ScoreLines.Columns(each.Item.Profile).Select(column => (Profile: each.Index, column.Path, column.Node, column.IsGateOnly))).ToArray();
        return new(scores[0].Devices, [.. columns.Select(column => $"{column.Profile} {column.Path}")],
            [.. scores[0].Devices.Select((_, device) => columns.Select(column => Value(scores[column.Profile].Scores[device], column.Path, column.Node, column.IsGateOnly)).ToImmutableArray())]);
    }

    static Interval Value(ScoreDocument score, string path, ProfileNode node, bool isGateOnly) =>
        ScoreLines.ValueOf(score.Nodes.First(line => line.Path == path), isGateOnly) ?? node.Scale.Whole;
}
