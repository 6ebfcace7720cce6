using System.Collections.Immutable;
using FixScore.Analysis.Agreement;
using FixScore.Analysis.Ranking;

namespace FixScore.Analysis.Comparing;

/// <summary>Compares every profile with every other.</summary>
static class ProfilePairs
{
    public static ImmutableArray<ProfilePair> Of(ImmutableArray<ProfileScores> scores, ImmutableArray<Rank>[] ranks)
    {
        ScoredUnits[] units = [.. scores.Select(each => new ScoredUnits(each.Profile.Id, each.Totals, Contributions.Of(each)))];
        ImmutableArray<decimal>[] middles = [.. ranks.Select(each => each.Select(rank => rank.Middle).ToImmutableArray())];
        bool[] exact = [.. scores.Select(Contributions.AreExact)];
        return [.. from a in Enumerable.Range(0, scores.Length)
                   from b in Enumerable.Range(a + 1, scores.Length - a - 1)
                   select new ProfilePair(a, b, RankAgreement.Of(middles[a], middles[b]), RankShift.Between(middles[a], middles[b]), Reversals.Between(units[a], units[b]), exact[a] && exact[b])];
    }
}
