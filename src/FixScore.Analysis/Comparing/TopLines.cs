using System.Collections.Immutable;
using FixScore.Numbers;

namespace FixScore.Analysis.Comparing;

/// <summary>The lines directly below the total, where the total is their weighted arithmetic mean.</summary>
static class TopLines
{
    public static (UnitTable Table, ImmutableArray<decimal> Weights)? Of(ProfileScores scores)
    {
        if (scores.Profile.Root is not GroupNode { Aggregate: Aggregate.WeightedArithmetic, Over: null } root) return null;
        var lines = root.Of.Where(node => !node.GateOnly && node.Weight > 0m).ToImmutableArray();
        if (lines.Length < 2) return null;
        var table = new UnitTable(scores.Devices, [.. lines.Select(line => line.Id)],
            [.. scores.Scores.Select(score => lines.Select(line => Share(score, root, line)).ToImmutableArray())]);
        return (table, [.. lines.Select(line => line.Weight!.Value)]);
    }

    static Interval Share(ScoreDocument score, GroupNode root, ProfileNode line)
    {
        var shown = score.Nodes.First(node => node.Path == $"{root.Id}/{line.Id}");
        var value = shown.Share > 0m ? shown.Value : line.Scale.Whole;
        return new(Part(value.Low, line.Scale), Part(value.High, line.Scale));
    }

    static decimal Part(decimal value, Scale scale) => (((Rational)value - scale.Min) / ((Rational)scale.Max - scale.Min)).ToDecimal();
}
