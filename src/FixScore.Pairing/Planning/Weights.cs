namespace FixScore.Pairing.Planning;

/// <summary>How probable outcomes are, and how much is left to find out, in a belief.</summary>
/// <remarks>Sums over sets of tied parts without listing them: only candidates within flagged sets are told apart one by one.</remarks>
sealed class Weights(TieBelief belief)
{
    const int MostListed = 300;

    readonly decimal[] tied = [.. belief.Candidates.Select(each => each.Tied)];
    readonly decimal[] free = [.. belief.Candidates.Select(each => each.Free)];
    readonly decimal[] bitsTied = [.. belief.Candidates.Select(each => Logarithm.Base2(each.Tied))];
    readonly decimal[] bitsFree = [.. belief.Candidates.Select(each => Logarithm.Base2(each.Free))];
    readonly Dictionary<Knowledge, decimal> totals = [];
    readonly Dictionary<Knowledge, decimal> entropies = [];
    readonly Dictionary<Knowledge, decimal> leastTrials = [];

    public decimal ProbabilityOf(int each) => tied[each] / (tied[each] + free[each]);

    public bool AreAlike(int one, int other) => tied[one] == tied[other] && free[one] == free[other];

    /// <summary>The probability that a trial of some open candidates is clean.</summary>
    public decimal Clean(Knowledge knowledge, ulong trial)
    {
        if (knowledge.Flags.Any(flag => flag.Within(trial))) return 0;
        var total = Total(knowledge);
        return total == 0 ? 0 : FreeOf(trial) * Total(knowledge.Open & ~trial, Cut(knowledge.Flags, trial), knowledge.Least, knowledge.Most) / total;
    }

    /// <summary>The entropy of the belief in bits: no plan settles all with fewer trials on average (Shannon 1948, theorem 9).</summary>
    public decimal Entropy(Knowledge knowledge)
    {
        if (entropies.TryGetValue(knowledge, out var known)) return known;
        var total = Total(knowledge);
        if (total == 0) return 0;
        var bits = 0m;
        foreach (var each in knowledge.Open.Members())
        {
            var clean = Clean(knowledge, Masks.Bit(each));
            bits += clean * bitsFree[each] + (1 - clean) * bitsTied[each];
        }
        return entropies[knowledge] = Math.Max(0, Logarithm.Base2(total) - bits);
    }

    /// <summary>No plan settles all with fewer trials on average: the cost of a Huffman code where the sets can be listed, else the entropy.</summary>
    public decimal LeastTrials(Knowledge knowledge) => leastTrials.TryGetValue(knowledge, out var known) ? known
        : leastTrials[knowledge] = LeastTrials(knowledge, MostListed);

    /// <summary>The same, listing no more sets than told.</summary>
    public decimal LeastTrials(Knowledge knowledge, int mostListed) =>
        Hypotheses.Of(knowledge, mostListed) is { } sets ? Huffman.Cost([.. sets.Select(set => WeightOf(knowledge, set))]) : Entropy(knowledge);

    decimal WeightOf(Knowledge knowledge, ulong set) =>
        knowledge.Open.Members().Aggregate(1m, (product, each) => product * (set.Meets(Masks.Bit(each)) ? tied[each] : free[each]));

    decimal Total(Knowledge knowledge) =>
        totals.TryGetValue(knowledge, out var known) ? known : totals[knowledge] = Total(knowledge.Open, knowledge.Flags, knowledge.Least, knowledge.Most);

    // Over the first tied one of the smallest flagged set: those before it are free, those after it can be either.
    decimal Total(ulong open, ulong[] flags, int least, int most)
    {
        if (most < 0) return 0;
        if (flags.Length == 0) return Total(open, least, most);
        var (sum, before, flag) = (0m, 1m, flags.MinBy(flag => flag.Size()));
        foreach (var each in flag.Members())
        {
            open &= ~Masks.Bit(each);
            sum += before * tied[each] * Total(open, [.. flags.Where(other => !other.Meets(Masks.Bit(each)))], least - 1, most - 1);
            before *= free[each];
            flags = Cut(flags, Masks.Bit(each));
            if (flags.Contains(0UL)) break;
        }
        return sum;
    }

    decimal Total(ulong open, int least, int most)
    {
        if (least <= 0 && most >= open.Size()) return open.Members().Aggregate(1m, (product, each) => product * (tied[each] + free[each]));
        var bySize = new decimal[Math.Max(0, Math.Min(most, open.Size())) + 1];
        bySize[0] = 1;
        foreach (var each in open.Members())
            for (var size = bySize.Length - 1; size >= 0; size--)
                bySize[size] = bySize[size] * free[each] + (size > 0 ? bySize[size - 1] * tied[each] : 0);
        return bySize.Skip(Math.Max(least, 0)).Sum();
    }

    decimal FreeOf(ulong set) => set.Members().Aggregate(1m, (product, each) => product * free[each]);

    static ulong[] Cut(ulong[] flags, ulong away) => [.. flags.Select(flag => flag & ~away)];
}
