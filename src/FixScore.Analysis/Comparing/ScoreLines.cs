using System.Collections.Immutable;

namespace FixScore.Analysis.Comparing;

/// <summary>Finds lines in score documents.</summary>
static class ScoreLines
{
    /// <summary>The lines that no other line lies below; their contributions add up to the total before gates.</summary>
    public static IEnumerable<ScoreNode> Lowest(ScoreDocument score)
    {
        // Depth first: what lies below a line follows it.
        for (var i = 0; i < score.Nodes.Length; i++)
            if (i + 1 == score.Nodes.Length || !score.Nodes[i + 1].Path.StartsWith(score.Nodes[i].Path + "/", StringComparison.Ordinal))
                yield return score.Nodes[i];
    }

    /// <summary>The name under which profiles share a line: its criterion, or the node where parts are missing that would be asked for.</summary>
    public static string CriterionOf(ScoreNode line) => line.Criterion?.Id ?? line.Id;

    /// <summary>The nodes whose lines every score of the profile has, with their paths: leaves, or what is spread over parts.</summary>
    public static IEnumerable<(string Path, ProfileNode Node, bool IsGateOnly)> Columns(Profile profile) => Columns(profile.Root, profile.Root.Id, false);

    static IEnumerable<(string, ProfileNode, bool)> Columns(ProfileNode node, string path, bool gateOnly) => node is GroupNode { Over: null } group
        ? group.Of.SelectMany(child => Columns(child, $"{path}/{child.Id}", gateOnly || child.GateOnly))
        : [(path, node, gateOnly)];

    /// <summary>The value of a line that counts; <c>null</c> where the line was left out.</summary>
    public static Interval? ValueOf(ScoreNode line, bool isGateOnly) => line.Share > 0m || isGateOnly ? line.Value : null;
}
