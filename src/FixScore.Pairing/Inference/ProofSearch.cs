using System.Collections.Immutable;

namespace FixScore.Pairing.Inference;

/// <summary>What a proof must do: clear all parts, besides holding the trial it starts from.</summary>
sealed record ProofGoal(int? Start, ImmutableArray<string> ToClear);

/// <summary>Sets of trials, each as numbers in rising order, and whether no other set does as well.</summary>
sealed record Proofs(ImmutableArray<ImmutableSortedSet<int>> Sets, bool Complete);

/// <summary>When a search stops: after so many sets found, or so many covers looked at.</summary>
readonly record struct SearchLimit(int Sets, int Work);

/// <summary>Finds the smallest sets of trials that reach one of several goals: smallest set covers, by rising size.</summary>
/// <remarks>Limited by counted work, never by time. Beyond the limit a greedy cover without needless trials stands in.</remarks>
sealed class ProofSearch
{
    readonly ImmutableArray<Clearance> clearances;
    readonly SearchLimit limit;
    readonly Dictionary<string, ImmutableArray<Clearance>> clearing = new(StringComparer.Ordinal);
    readonly SortedSet<ImmutableSortedSet<int>> found = new(TrialOrder.Instance);
    readonly int largest;
    int work;

    ProofSearch(ImmutableArray<Clearance> clearances, ImmutableArray<ProofGoal> goals, SearchLimit limit)
    {
        this.clearances = clearances;
        this.limit = limit;
        foreach (var part in goals.SelectMany(goal => goal.ToClear).Distinct())
            clearing[part] = [.. clearances.Where(clearance => clearance.Clears(part))];
        largest = clearances.Select(clearance => clearance.Parts.Length).DefaultIfEmpty(1).Max();
    }

    /// <summary>The smallest sets that reach a goal; each part to clear is cleared by some clearance. No goal: no sets.</summary>
    public static Proofs Smallest(ImmutableArray<Clearance> clearances, ImmutableArray<ProofGoal> goals, SearchLimit limit) =>
        goals.IsEmpty ? new([], true) : new ProofSearch(clearances, goals, limit).Search(goals);

    bool Exhausted => work >= limit.Work || found.Count >= limit.Sets;

    Proofs Search(ImmutableArray<ProofGoal> goals)
    {
        for (var size = 1; found.Count == 0 && !Exhausted; size++)
            foreach (var goal in goals)
                Extend(StartOf(goal), goal.ToClear, size);
        return found.Count > 0
            ? new([.. found], !Exhausted)
            : new([goals.Select(goal => GreedyCover.Of(StartOf(goal), goal.ToClear, clearances)).MinBy(set => set.Count)!], false);
    }

    static ImmutableSortedSet<int> StartOf(ProofGoal goal) => goal.Start is { } start ? [start] : [];

    void Extend(ImmutableSortedSet<int> chosen, ImmutableArray<string> open, int size)
    {
        if (Exhausted) return;
        work++;
        if (chosen.Count + LeastFor(open.Length) > size) return;
        if (open.IsEmpty)
        {
            found.Add(chosen);
            return;
        }
        foreach (var clearance in clearing[open.MinBy(part => clearing[part].Length)!])
        {
            var left = open.RemoveAll(clearance.Clears);
            foreach (var next in With(chosen.Add(clearance.Trial), clearance.Controls)) Extend(next, left, size);
        }
    }

    int LeastFor(int parts) => (parts + largest - 1) / largest;

    static IEnumerable<ImmutableSortedSet<int>> With(ImmutableSortedSet<int> chosen, ImmutableArray<ImmutableArray<int>> controls)
    {
        if (controls.IsEmpty) return [chosen];
        var rest = controls[1..];
        return controls[0].Any(chosen.Contains)
            ? With(chosen, rest)
            : controls[0].SelectMany(control => With(chosen.Add(control), rest));
    }

    /// <summary>Sets of one size by their first differing trial.</summary>
    sealed class TrialOrder : IComparer<ImmutableSortedSet<int>>
    {
        public static readonly TrialOrder Instance = new();

        public int Compare(ImmutableSortedSet<int>? x, ImmutableSortedSet<int>? y) =>
            x!.Zip(y!, (a, b) => a.CompareTo(b)).FirstOrDefault(sign => sign != 0);
    }
}
