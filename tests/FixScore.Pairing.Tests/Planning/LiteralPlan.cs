namespace FixScore.Pairing.Tests.Planning;

/// <summary>The best plan by trying everything: sets of tied candidates are listed, every trial is tried, nothing is pruned.</summary>
static class LiteralPlan
{
    public static List<(int Tied, decimal Weight)> Sets(TieBelief belief)
    {
        var sets = new List<(int, decimal)>();
        for (var tied = 0; tied < 1 << belief.Candidates.Length; tied++)
        {
            var size = int.PopCount(tied);
            if (size < belief.AtLeast || size > belief.AtMost) continue;
            if (belief.Flagged.Any(flag => flag.All(id => (tied >> IndexOf(belief, id) & 1) == 0))) continue;
            sets.Add((tied, belief.Candidates.Select((each, index) => (tied >> index & 1) == 1 ? each.Tied : each.Free).Aggregate((a, b) => a * b)));
        }
        return sets;
    }

    public static decimal Expected(TieBelief belief)
    {
        var sets = Sets(belief);
        return Best(sets, belief.Candidates.Length, all => all.Sum(set => set.Weight), (clean, flagged) => clean + flagged, []) / sets.Sum(set => set.Weight);
    }

    public static int Worst(TieBelief belief) => (int)Best(Sets(belief), belief.Candidates.Length, _ => 1, Math.Max, []);

    // Weighted, not divided: the trials of each set times its weight.
    static decimal Best(
        List<(int Tied, decimal Weight)> sets, int candidates, Func<List<(int Tied, decimal Weight)>, decimal> trial, Func<decimal, decimal, decimal> join, Dictionary<string, decimal> known)
    {
        if (sets.Count <= 1) return 0;
        var key = string.Join(',', sets.Select(set => set.Tied));
        if (known.TryGetValue(key, out var value)) return value;
        return known[key] = trial(sets) + Splits(sets, candidates)
            .Min(split => join(Best(split.Clean, candidates, trial, join, known), Best(split.Flagged, candidates, trial, join, known)));
    }

    static IEnumerable<(List<(int, decimal)> Clean, List<(int, decimal)> Flagged)> Splits(List<(int Tied, decimal Weight)> sets, int candidates) =>
        from trial in Enumerable.Range(1, (1 << candidates) - 1)
        let clean = sets.Where(set => (set.Tied & trial) == 0).ToList()
        where clean.Count > 0 && clean.Count < sets.Count
        select (clean, sets.Where(set => (set.Tied & trial) != 0).ToList());

    static int IndexOf(TieBelief belief, string id) => belief.Candidates.TakeWhile(each => each.Id != id).Count();
}
