using FixScore.Reporting;

namespace FixScore.Cli.Commands.Score;

/// <summary>A place in a ranking. Exact totals decide; where they overlap, the order is not settled and it says so.</summary>
sealed record Ranking(int Rank, Judgement Judgement, string Remark)
{
    public static IEnumerable<Ranking> Of(IEnumerable<Judgement> judgements)
    {
        var ranked = Judgement.Ranked(judgements);
        var rank = 1;
        for (var i = 0; i < ranked.Count; i++)
        {
            if (i > 0 && ranked[i].Score.Total != ranked[i - 1].Score.Total) rank = i + 1;
            yield return new(rank, ranked[i], i + 1 < ranked.Count ? Remarks(ranked[i].Score.Total, ranked[i + 1].Score.Total) : "");
        }
    }

    static string Remarks(Interval upper, Interval lower) =>
        upper == lower ? "level"
        : upper.Low > lower.High ? "settled"
        : "not settled";
}
