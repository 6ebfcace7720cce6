using System.Collections.Immutable;

namespace FixScore.Reporting.Cards;

/// <summary>A line of a device's score as a bar.</summary>
/// <param name="Title">The name.</param>
/// <param name="Low">Points at the low end.</param>
/// <param name="High">Points at the high end.</param>
/// <param name="Least">Points where the bar starts.</param>
/// <param name="Most">Points the line could have.</param>
sealed record CardLine(string Title, decimal Low, decimal High, decimal Least, decimal Most);

/// <summary>The lines right below the total.</summary>
/// <param name="Lines">The lines in the order of the profile.</param>
/// <param name="Adds">Whether they add up to the total: points are then points of the total, else of the line's own scale.</param>
sealed record CardLines(ImmutableArray<CardLine> Lines, bool Adds)
{
    public static CardLines Of(Judgement judgement)
    {
        var nodes = judgement.Score.Nodes.Where(node => node.Path.Count(letter => letter == '/') == 1).ToArray();
        if (nodes.Length == 0) nodes = [judgement.Score.Nodes[0]];
        var adds = nodes.Any(node => node.Contribution is not null);
        return new([.. adds
            ? nodes.Where(node => node.Contribution is not null).Select(node => Added(judgement, node))
            : nodes.Select(node => Own(judgement, node))], adds);
    }

    // What is left over by rounding may put the ends of a contribution in either order.
    static CardLine Added(Judgement judgement, ScoreNode node)
    {
        var (low, high) = (node.Contribution!.Value.Low, node.Contribution.Value.High);
        return new(node.Title, Math.Min(low, high), Math.Max(low, high), 0, Math.Max(node.Share * ScaleOf(judgement, node).Max, Math.Max(low, high)));
    }

    static CardLine Own(Judgement judgement, ScoreNode node)
    {
        var scale = ScaleOf(judgement, node);
        return new(node.Title, node.Value.Low, node.Value.High, scale.Min, scale.Max);
    }

    static Scale ScaleOf(Judgement judgement, ScoreNode node) =>
        judgement.Profile.Nodes.FirstOrDefault(each => each.Id == node.Id)?.Scale ?? judgement.Profile.Scale.Points;
}
