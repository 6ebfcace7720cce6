using System.Collections.Immutable;
using FixScore.Analysis.Agreement;
using FixScore.Analysis.Ranking;

namespace FixScore.Analysis.Comparing;

/// <summary>Compares every profile with every other.</summary>
static class ProfilePairs
{
    public static ImmutableArray<ProfilePair> Of(ImmutableArray<ProfileScores> scores, ImmutableArray<Rank>[] ranks) => Of(
        [.. scores.Select(each => new ScoredUnits(each.Profile.Id, each.Totals, Contributions.Of(each)))], ranks, [.. scores.Select(Contributions.AreExact)]);

    public static ImmutableArray<ProfilePair> Of(ScoredUnits[] units, ImmutableArray<Rank>[] ranks, bool[] exact)
    {
        ImmutableArray<decimal>[] middles = [.. ranks.Select(each => each.Select(rank => rank.Middle).ToImmutableArray())];
        return [.. from a in Enumerable.Range(0, units.Length)
                   from b in Enumerable.Range(a + 1, units.Length - a - 1)
                   select new ProfilePair(a, b, RankAgreement.Of(middles[a], middles[b]), RankShift.Between(middles[a], middles[b]), Reversals.Between(units[a], units[b]), exact[a] && exact[b])];
    }
}
