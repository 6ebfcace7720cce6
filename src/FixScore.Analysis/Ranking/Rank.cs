namespace FixScore.Analysis.Ranking;

/// <summary>The places a unit can have, from 1 for the first. Less is better.</summary>
/// <remarks>Units that are level share all the places they take: two level ones at the top both have places 1 to 2, middle 1.5.</remarks>
/// <param name="Best">The best place: one more than the units that are above it for certain.</param>
/// <param name="Worst">The worst place: the units that can be above it or level with it, itself included.</param>
public readonly record struct Rank(int Best, int Worst)
{
    /// <summary>The middle of both, as rank statistics use it; a whole or a half.</summary>
    public decimal Middle => (Best + Worst) / 2m;

    /// <summary>The rank of a unit, from how all, itself included, compare with it: above 0 for those before it.</summary>
    internal static Rank Among(IEnumerable<int> comparisons)
    {
        var (above, level) = (0, 0);
        foreach (var sign in comparisons)
            if (sign > 0) above++;
            else if (sign == 0) level++;
        return new(above + 1, above + level);
    }
}
