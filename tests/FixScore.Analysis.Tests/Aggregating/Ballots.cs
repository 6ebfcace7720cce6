using System.Collections.Immutable;
using FixScore.Analysis.Aggregating;

namespace FixScore.Analysis.Tests.Aggregating;

/// <summary>Votes as the Handbook writes them: so many indicators for an order of letters.</summary>
static class Ballots
{
    public static SupportMatrix Of(params (int Count, string Order)[] votes)
    {
        var letters = votes[0].Order.Order().Select(letter => letter.ToString()).ToImmutableArray();
        var table = UnitTables.Of(letters, [.. votes.Select((vote, i) => $"{i} {vote.Order}")],
            letters.Select(letter => votes.Select(vote => (decimal)-vote.Order.IndexOf(letter, StringComparison.Ordinal)).ToImmutableArray()));
        return SupportMatrix.Of(table, [.. votes.Select(vote => (decimal)vote.Count)]);
    }

    public static string[] Named(this KemenyOrders orders, SupportMatrix matrix) => [.. orders.Orders.Select(order => string.Join('-', order.Select(unit => matrix.Units[unit])))];
}
