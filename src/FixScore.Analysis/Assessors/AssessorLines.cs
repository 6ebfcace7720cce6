using System.Collections.Immutable;
using FixScore.Analysis.Comparing;
using FixScore.Numbers;

namespace FixScore.Analysis.Assessors;

/// <summary>Puts the lines of several scores side by side.</summary>
static class AssessorLines
{
    public static ImmutableArray<AssessorLine> Of(ProfileScores scores)
    {
        var nodes = scores.Profile.Nodes.ToDictionary(node => node.Id, StringComparer.Ordinal);
        var lines = scores.Scores.Select(score => ScoreLines.Lowest(score).Where(line => line.Criterion is not null).ToDictionary(line => line.Path, StringComparer.Ordinal)).ToArray();
        return [.. from path in lines.SelectMany(each => each.Keys).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)
                   let found = lines.Select(each => each.GetValueOrDefault(path)).ToArray()
                   let criterion = found.First(line => line is not null)!.Criterion!.Id
                   select new AssessorLine(path, criterion, [.. found.Select(line => line is null ? null : Value(line, nodes[line.Id]))])];
    }

    static Interval? Value(ScoreNode line, ProfileNode node) =>
        ScoreLines.ValueOf(line, node.GateOnly) is { } value ? new(Share(value.Low, node.Scale), Share(value.High, node.Scale)) : null;

    static decimal Share(decimal points, Scale scale) => (((Rational)points - scale.Min) / ((Rational)scale.Max - scale.Min)).ToDecimal();
}
