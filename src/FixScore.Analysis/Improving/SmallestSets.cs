using System.Collections.Immutable;

namespace FixScore.Analysis.Improving;

/// <summary>Tries sets of changes by rising size until some reach the target.</summary>
sealed class SmallestSets(WhatIf whatIf, Profile profile, Target target)
{
    readonly List<(UInt128 Set, ScoreTotal Total)> front = [];
    readonly List<(UInt128 Set, ScoreTotal Total)> reaching = [];

    /// <summary>The answer; <c>null</c> when a set scores otherwise as a whole, so that a criterion reads more than it says.</summary>
    public Improvement? Run(Suggestions found)
    {
        var (size, most) = (0, whatIf.Candidates.Length);
        while (size == 0 || (size <= most && reaching.Count == 0 && !whatIf.IsExhausted && IsWorthTrying(size))) Try(size++);
        var isOver = !whatIf.IsExhausted && (reaching.Count > 0 || size > most || !IsWorthTrying(size));
        var lowerBound = reaching.Count > 0 || !isOver ? Math.Max(0, size - 1) : (int?)null;
        if (reaching.Count == 0 && !isOver) reaching.AddRange(new StepByStep(whatIf, profile, target).From(front[^1]));
        if (!reaching.Concat(front).All(each => whatIf.Whole(each.Set, profile) == each.Total)) return null;
        return new()
        {
            Target = target,
            Now = front[0].Total,
            Sets = [.. reaching.OrderByDescending(each => each.Total.Total.Low).ThenByDescending(each => FirstFirst(each.Set)).Select(Described)],
            IsOptimal = isOver && found.AreAll,
            LowerBound = lowerBound,
            Front = [.. front.Select(Described)],
            Candidates = whatIf.Candidates,
            Unusable = found.Unusable,
            WithoutChanges = found.Without,
            Tried = whatIf.Tried,
        };
    }

    // The set with the earlier first difference is greater.
    static UInt128 FirstFirst(UInt128 set) => Choices.In(set).Aggregate(UInt128.Zero, (bits, i) => bits | Choices.Bit(Choices.Most - 1 - i));

    // Once no set of a size goes together, none of a greater does.
    bool IsWorthTrying(int size) => whatIf.Choices.Of(All, size).Any();

    UInt128 All => Enumerable.Range(0, whatIf.Candidates.Length).Aggregate(UInt128.Zero, (all, i) => all | Choices.Bit(i));

    void Try(int size)
    {
        (UInt128 Set, ScoreTotal Total)? best = null;
        foreach (var (shares, bound) in Promising(size))
        {
            if (bound is not null && !target.IsReachedBy(bound, profile) && bound.Total.Low <= BestLow(best)) continue;
            foreach (var set in Blocks.Sets(whatIf.Blocks, shares, whatIf.Choices))
            {
                if (whatIf.IsExhausted && size > 0) return;
                if (whatIf.Score(set) is not { } total) continue;
                if (target.IsReachedBy(total, profile)) reaching.Add((set, total));
                if (best is null && front.Count == 0 || total.Total.Low > BestLow(best)) best = (set, total);
            }
        }
        if (best is { } found) front.Add(found);
    }

    decimal BestLow((UInt128 Set, ScoreTotal Total)? best) => best?.Total.Total.Low ?? (front.Count == 0 ? decimal.MinValue : front[^1].Total.Total.Low);

    // The highest bound first, so that what is found early rules out the rest.
    IEnumerable<(ImmutableArray<int> Shares, ScoreTotal? Bound)> Promising(int size) =>
        [.. Blocks.Shares(whatIf.Blocks, size).Select(shares => (shares, Bound: whatIf.Bound(shares))).OrderByDescending(each => each.Bound?.Total.Low ?? decimal.MaxValue)];

    ImprovementSet Described((UInt128 Set, ScoreTotal Total) found) => new([.. Choices.In(found.Set).Select(i => whatIf.Candidates[i])], found.Total);
}
