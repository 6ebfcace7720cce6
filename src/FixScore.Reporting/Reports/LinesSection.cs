using System.Collections.Immutable;
using System.Globalization;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>Every line of a score: points, weight, what it adds to the total, how far the total could rise through it.</summary>
sealed class LinesSection(CultureInfo culture)
{
    readonly Shown shown = new(culture);

    public Section Of(Judgement judgement)
    {
        var adds = judgement.AddsUp;
        var grid = new Grid("Points of each line; headroom is how far the low end of the total would rise if the line had its maximum",
            ["Line", new("", GridKind.Bar), new("Points", GridKind.Number), new("Weight", GridKind.Number) { IsExtra = true }, .. adds ? (GridColumn[])[new("Of the total", GridKind.Number)] : [], new("Headroom", GridKind.Number)],
            [.. judgement.Score.Nodes.Select(node => Row(judgement, node, adds).ToImmutableArray())]);
        return new("Every line", [grid]) { IsFolded = true, Gist = string.Create(CultureInfo.InvariantCulture, $"{judgement.Score.Nodes.Length} lines of points and weights") };
    }

    IEnumerable<GridCell> Row(Judgement judgement, ScoreNode node, bool adds)
    {
        yield return new(node.Title) { Depth = node.Path.Count(letter => letter == '/') };
        yield return new("") { Extent = new(node.Value, judgement.ScaleOf(node)) };
        yield return shown.Points(node.Shown);
        yield return node.Weight is { } weight ? shown.Number(weight) : "";
        if (adds) yield return node.Contribution is { } ends ? shown.Points(ends) : "";
        yield return shown.Short(node.Headroom);
    }
}
