using System.Collections.Immutable;
using CsCheck;
using FixScore.Analysis.Aggregating;
using FixScore.Analysis.Ranking;

namespace FixScore.Analysis.Tests.Aggregating;

/// <summary>Rules without compensation. Votes and supports: OECD and JRC Handbook (2008), Tables 25 to 30 and 35 to 37; points by Copeland recomputed.</summary>
public sealed class OutrankingTests
{
    [Fact]
    public void Twenty_one_indicators_vote()
    {
        var votes = Ballots.Of((3, "abcd"), (5, "acbd"), (7, "bdca"), (6, "cbda"));
        Support.Equal([24m, 44m, 38m, 20m], votes.Borda());
        Assert.Equal((8m, 8m, 8m, 10m, 21m, 14m), (votes[0, 1], votes[0, 2], votes[0, 3], votes[1, 2], votes[1, 3], votes[2, 3]));
        Support.Equal([-3, 1, 3, -1], votes.Copeland());
        var best = votes.Kemeny();
        Assert.Equal((85m, 1L), (best.Support, best.Count));
        Assert.Equal(["c-b-d-a"], best.Named(votes));
        Assert.Equal(84m, votes.SupportOf([1, 2, 3, 0]));
    }

    [Fact]
    public void Sixty_indicators_vote_in_a_circle()
    {
        var votes = Ballots.Of((23, "abc"), (17, "bca"), (2, "bac"), (10, "cab"), (8, "cba"));
        Support.Equal([58m, 69m, 53m], votes.Borda());
        Assert.Equal((33m, 42m, 35m), (votes[0, 1], votes[1, 2], votes[2, 0]));
        Support.Equal([0, 0, 0], votes.Copeland());
        Assert.Equal(["b-c-a"], votes.Kemeny().Named(votes));
        Assert.Equal([104m, 100m, 94m, 86m, 80m, 76m], ((int[][])[[1, 2, 0], [0, 1, 2], [1, 0, 2], [2, 0, 1], [2, 1, 0], [0, 2, 1]]).Select(order => votes.SupportOf([.. order])));
    }

    [Fact]
    public void Three_voters_in_a_circle_leave_three_best_orders()
    {
        var votes = Ballots.Of((1, "abc"), (1, "cab"), (1, "bca"));
        Support.Equal([3m, 3m, 3m], votes.Borda());
        Assert.Equal(["a-b-c", "b-c-a", "c-a-b"], votes.Kemeny().Named(votes));
        Assert.Equal(3, votes.Kemeny(most: 1).Count);
        Assert.Single(votes.Kemeny(most: 1).Orders);
    }

    [Fact]
    public void Five_countries_have_three_best_orders()
    {
        var matrix = FiveCountries();
        decimal[][] expected =
        [
            [0, 0.5m, 0.375m, 0.75m, 0.625m],
            [0.5m, 0, 0.5m, 0.625m, 0.625m],
            [0.625m, 0.5m, 0, 0.75m, 0.625m],
            [0.25m, 0.375m, 0.25m, 0, 0.75m],
            [0.375m, 0.375m, 0.375m, 0.25m, 0],
        ];
        Assert.Equal(expected, matrix.Support.Select(row => row.ToArray()));
        var best = matrix.Kemeny();
        Assert.Equal(6.375m, best.Support);
        Assert.Equal(["USA-SWE-FIN-JPN-KOR", "SWE-FIN-USA-JPN-KOR", "SWE-USA-FIN-JPN-KOR"], best.Named(matrix));
    }

    // Recomputed by pair counting, no source.
    [Fact]
    public void Units_that_are_level_share_a_point()
    {
        var table = Support.Table([3, 2, 5], [3, 4, 1], [2, 4, 4], [2, 2, 4], [3, 2, 1]);
        var matrix = SupportMatrix.Of(table, [1, 1, 1]);
        Support.Equal([8m, 7m, 6.5m, 4m, 4.5m], matrix.Borda());
        Support.Equal([3, 2, 1, -3, -3], matrix.Copeland());
    }

    [Fact]
    public void The_first_criterion_decides_before_the_second() =>
        Assert.Equal([2, 1, 4, 5, 3], Lexicographic.Ranks(Support.Table([3, 2, 5], [3, 4, 1], [2, 4, 4], [2, 2, 4], [3, 2, 1]), [0, 1, 2]).Select(rank => rank.Best));

    [Fact]
    public void What_agrees_on_every_criterion_named_is_level() =>
        Support.Equal([new Rank(1, 2), new Rank(1, 2), new Rank(3, 3)], Lexicographic.Ranks(Support.Table([3, 1], [3, 2], [1, 9]), [0]));

    [Fact]
    public void Open_values_and_too_many_units_are_refused()
    {
        Assert.Throws<ArgumentException>(() => SupportMatrix.Of(Support.Open([new Interval(1, 2)], [3m]), [1]));
        var many = SupportMatrix.Of(Support.Table([.. Enumerable.Range(0, 17).Select(i => ImmutableArray.Create((decimal)i))]), [1]);
        Assert.Throws<InvalidOperationException>(() => many.Kemeny());
    }

    [Fact]
    public void No_order_has_more_support_than_the_best_and_as_many_have_as_much_as_are_counted() =>
        Gen.Int[0, 3].Select(value => (decimal)value).Array[3].Array[2, 6].Sample(rows =>
        {
            var matrix = SupportMatrix.Of(Support.Table([.. rows.Select(row => row.ToImmutableArray())]), [2, 3, 4]);
            var all = Orders([.. Enumerable.Range(0, rows.Length)]).Select(order => matrix.SupportOf([.. order])).ToArray();
            var best = matrix.Kemeny(most: 720);
            Assert.Equal(all.Max(), best.Support);
            Assert.Equal(all.Count(support => support == best.Support), best.Count);
            Assert.Equal(best.Count, best.Orders.Length);
            Assert.All(best.Orders, order => Assert.Equal(best.Support, matrix.SupportOf(order)));
        }, iter: 100);

    static SupportMatrix FiveCountries()
    {
        (string Name, string Code, decimal Telephones, decimal Electricity)[] five =
            [("Finland", "FIN", 3.080m, 4.150m), ("United States", "USA", 2.997m, 4.073m), ("Sweden", "SWE", 3.096m, 4.145m), ("Japan", "JPN", 3.003m, 3.865m), ("Korea", "KOR", 2.972m, 3.653m)];
        var table = UnitTables.Of([.. five.Select(country => country.Code)], Technology.Indicators,
            five.Select(country => Technology.Countries[Technology.Number(country.Name)].Values.SetItem(4, country.Telephones).SetItem(5, country.Electricity)));
        return SupportMatrix.Of(table, [.. Technology.Indicators.Select(_ => 0.125m)]);
    }

    static IEnumerable<int[]> Orders(int[] units) =>
        units.Length == 0 ? [[]] : units.SelectMany(first => Orders([.. units.Where(unit => unit != first)]).Select(rest => (int[])[first, .. rest]));
}
