namespace FixScore.Analysis.Improving;

/// <summary>Where not all sets can be tried: adds the change that brings most, again and again, and drops in the end what is not needed.</summary>
sealed class StepByStep(WhatIf whatIf, Profile profile, Target target)
{
    /// <summary>A set that reaches the target, from a good one; nothing when no single change brings more, or the effort is spent.</summary>
    public IEnumerable<(UInt128 Set, ScoreTotal Total)> From((UInt128 Set, ScoreTotal Total) start)
    {
        whatIf.Extend();
        var now = start;
        while (!target.IsReachedBy(now.Total, profile))
        {
            var best = With(now.Set).Append(now).MaxBy(each => each.Total.Total.Low);
            if (best.Total.Total.Low <= now.Total.Total.Low) return [];
            now = best;
        }
        return [Choices.In(now.Set).Aggregate(now, Without)];
    }

    IEnumerable<(UInt128 Set, ScoreTotal Total)> With(UInt128 set)
    {
        for (var i = 0; i < whatIf.Candidates.Length && !whatIf.IsExhausted; i++)
            if ((set & Choices.Bit(i)) == 0 && whatIf.Choices.Agree(set, Choices.Bit(i)) && whatIf.Score(set | Choices.Bit(i)) is { } total)
                yield return (set | Choices.Bit(i), total);
    }

    (UInt128 Set, ScoreTotal Total) Without((UInt128 Set, ScoreTotal Total) found, int change) =>
        whatIf.Score(found.Set & ~Choices.Bit(change)) is { } total && target.IsReachedBy(total, profile) ? (found.Set & ~Choices.Bit(change), total) : found;
}
