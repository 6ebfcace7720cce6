namespace FixScore.Reporting;

/// <summary>How a device stands to the next one in a ranking.</summary>
public enum Standing
{
    /// <summary>Whatever the open observations turn out to be, it is above the next.</summary>
    Above,

    /// <summary>Both totals are exact and equal.</summary>
    Level,

    /// <summary>The totals overlap: the order depends on open observations.</summary>
    Open,

    /// <summary>There is no next one.</summary>
    Last,
}

/// <summary>A place in a ranking: exact totals decide, and where they overlap the place is a range.</summary>
/// <param name="Best">The best place it can have, from 1: one more than the devices that are above it for certain.</param>
/// <param name="Worst">The worst place it can have: one more than the devices that can be above it.</param>
/// <param name="Judgement">The judgement.</param>
/// <param name="Next">How it stands to the next one.</param>
public sealed record Placing(int Best, int Worst, Judgement Judgement, Standing Next)
{
    /// <summary>Ranks judgements by one profile: by the middles of the totals, then by low ends, then by id of the record.</summary>
    public static IReadOnlyList<Placing> Of(IEnumerable<Judgement> judgements)
    {
        Judgement[] ranked =
            [.. judgements.OrderByDescending(each => each.Score.Total.Low + each.Score.Total.High)
                .ThenByDescending(each => each.Score.Total.Low).ThenBy(each => each.Record.Id, StringComparer.Ordinal)];
        return [.. ranked.Select((each, index) => new Placing(
            1 + ranked.Count(other => other.Score.Total.Low > each.Score.Total.High),
            1 + ranked.Count(other => other != each && other.Score.Total.High > each.Score.Total.Low),
            each,
            index + 1 < ranked.Length ? Between(each.Score.Total, ranked[index + 1].Score.Total) : Standing.Last))];
    }

    static Standing Between(Interval upper, Interval lower) =>
        upper.Low > lower.High ? Standing.Above
        : upper == lower && upper.IsExact ? Standing.Level
        : Standing.Open;
}
