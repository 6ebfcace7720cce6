using System.Collections.Immutable;

namespace FixScore.Pairing.Posterior;

/// <summary>Parts that statements link, directly or through others, and these statements, renumbered.</summary>
/// <param name="Parts">Numbers of the parts in rising order.</param>
/// <param name="Factors">The statements, by place in <paramref name="Parts"/>.</param>
sealed record Linked(ImmutableArray<int> Parts, ImmutableArray<Factor> Factors)
{
    public static IEnumerable<Linked> Of(ImmutableArray<Factor> factors)
    {
        var leaders = new SortedDictionary<int, int>();
        int Leader(int part) => leaders.TryGetValue(part, out var other) && other != part ? Leader(other) : part;
        foreach (var factor in factors)
            foreach (var part in factor.Parts)
            {
                leaders.TryAdd(part, part);
                leaders[Leader(part)] = Leader(factor.Parts[0]);
            }
        return leaders.Keys.ToArray().GroupBy(Leader).Select(parts => With([.. parts], factors));
    }

    static Linked With(ImmutableArray<int> parts, ImmutableArray<Factor> factors) => new(
        parts, [.. factors.Where(factor => !factor.Parts.IsEmpty && parts.Contains(factor.Parts[0])).Select(factor => factor with { Parts = [.. factor.Parts.Select(part => parts.IndexOf(part))] })]);
}
