using System.Collections.Immutable;
using FixScore.Analysis.Sensitivity.Profiles;

namespace FixScore.Analysis.Comparing;

/// <summary>The lines directly below the total, where the total is their weighted arithmetic mean.</summary>
static class TopLines
{
    public static (UnitTable Table, ImmutableArray<decimal> Weights)? Of(ProfileScores scores)
    {
        if (ProfileLines.Of(scores.Profile) is not (var root, var lines)) return null;
        var table = new UnitTable(scores.Devices, [.. lines.Select(line => line.Id)],
            [.. scores.Scores.Select(score => lines.Select(line => Share(score, root, line)).ToImmutableArray())]);
        return (table, [.. lines.Select(line => line.Weight!.Value)]);
    }

    static Interval Share(ScoreDocument score, GroupNode root, ProfileNode line)
    {
        var shown = score.Nodes.First(node => node.Path == $"{root.Id}/{line.Id}");
        var value = shown.Share > 0m ? shown.Value : line.Scale.Whole;
        return new(ProfileLines.Share(value.Low, line.Scale), ProfileLines.Share(value.High, line.Scale));
    }
}
