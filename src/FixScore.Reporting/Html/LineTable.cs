using System.Globalization;

namespace FixScore.Reporting.Html;

/// <summary>Lines of a score: points, weight, what each adds to the total, how far the total could rise through it.</summary>
sealed class LineTable(Shown shown)
{
    static readonly (string, string)[] Before = [("Line", "line"), ("Range", "drawn"), ("Points", "number"), ("Weight", "number less")];
    static readonly (string, string)[] Adding = [("Of the total", "number")];
    static readonly (string, string)[] After = [("Headroom", "number")];

    /// <summary>The lines down to a depth. What a line adds to the total is left out where nothing adds up.</summary>
    public Markup Of(Judgement judgement, int deepest)
    {
        var adds = judgement.Score.Nodes.Skip(1).Any(node => node.Contribution is not null);
        return Table.Of("", [.. Before, .. adds ? Adding : [], .. After],
            judgement.Score.Nodes.Where(node => Depth(node) <= deepest).Select(node => Row(judgement, node, adds)));
    }

    Markup[] Row(Judgement judgement, ScoreNode node, bool adds) => [
        Markup.Classed("span", $"depth-{Math.Min(Depth(node), 4).ToString(CultureInfo.InvariantCulture)}", [node.Title]),
        IntervalBar.Small(node.Value, ScaleOf(judgement, node)),
        shown.Points(node.Shown),
        node.Weight is { } weight ? shown.Number(weight) : "",
        .. adds ? (Markup[])[node.Contribution is { } ends ? shown.Points(ends) : ""] : [],
        shown.Short(node.Headroom)];

    static Scale ScaleOf(Judgement judgement, ScoreNode node) =>
        judgement.Profile.Nodes.FirstOrDefault(each => each.Id == node.Id)?.Scale ?? judgement.Profile.Scale.Points;

    static int Depth(ScoreNode node) => node.Path.Count(letter => letter == '/');
}
