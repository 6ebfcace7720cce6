using FixScore.Pairing.Designs;
using static FixScore.Pairing.Tests.Designs.Outcomes;

namespace FixScore.Pairing.Tests.Designs;

public sealed class BinarySplittingTests
{
    // Worst cases of generalised binary splitting (Hwang 1972; Du & Hwang, Combinatorial Group Testing, both from memory),
    // recomputed by an exact worst-case recursion of the strategy.
    [Theory]
    [InlineData(8, 1, 4)]
    [InlineData(32, 1, 6)]
    [InlineData(10, 2, 7)]
    [InlineData(16, 2, 8)]
    [InlineData(100, 2, 14)]
    [InlineData(20, 3, 12)]
    [InlineData(100, 3, 20)]
    [InlineData(1000, 10, 84)]
    public void The_worst_case_is_that_of_the_formula(int parts, int atMost, int trials) =>
        Assert.Equal(trials, BinarySplitting.WorstCase(parts, atMost));

    [Fact]
    public void Every_set_of_tied_parts_is_found_and_the_longest_search_meets_the_formula()
    {
        for (var parts = 1; parts <= 10; parts++)
            for (var atMost = 0; atMost <= Math.Min(parts, 5); atMost++)
            {
                var sets = Enumerable.Range(0, 1 << parts).Where(set => int.PopCount(set) <= atMost);
                Assert.Equal(BinarySplitting.WorstCase(parts, atMost), sets.Max(set => Search(parts, atMost, set)));
            }
    }

    [Fact]
    public void A_single_tied_part_of_many_is_found_within_the_formula()
    {
        Assert.Equal(6, Enumerable.Range(0, 32).Max(one => SearchFor(32, 1, [$"p{one + 1}"])));
        Assert.Equal(14, Enumerable.Range(0, 100).SelectMany(one => Enumerable.Range(0, one + 1), (one, two) => SearchFor(100, 2, [$"p{one + 1}", $"p{two + 1}"])).Max());
    }

    [Fact]
    public void The_first_group_is_a_power_of_two_and_halves_when_flagged()
    {
        var search = BinarySplitting.Of(Parts(10), 2);
        Assert.Equal("p1 p2 p3 p4", search.Next.Joined());
        search = search.After(flagged: true);
        Assert.Equal("p1 p2", search.Next.Joined());
        search = search.After(flagged: false);
        Assert.Equal("p3", search.Next.Joined());
        search = search.After(flagged: true);
        Assert.Equal("p3", search.Tied.Joined());
        Assert.Equal("p4 p5 p6 p7 p8 p9 p10", search.Open.Joined());
        Assert.Equal(1, search.AtMost);
    }

    [Fact]
    public void A_search_that_is_done_takes_no_outcome() =>
        Assert.Throws<InvalidOperationException>(() => BinarySplitting.Of(Parts(3), 0).After(flagged: true));

    // By hand from the formula in its comment: one by one below, groups from n = 2d - 1 on.
    [Theory]
    [InlineData(4, 3, 4)]
    [InlineData(5, 3, 5)]
    [InlineData(6, 4, 6)]
    [InlineData(7, 4, 7)]
    [InlineData(12, 3, 10)]
    [InlineData(16, 2, 8)]
    public void Where_one_by_one_ends_and_groups_begin(int parts, int atMost, int trials) => Assert.Equal(trials, BinarySplitting.WorstCase(parts, atMost));

    [Theory]
    [InlineData(-1)]
    [InlineData(4)]
    public void A_number_of_culprits_lies_between_none_and_all(int atMost)
    {
        Assert.Equal("atMost", Assert.Throws<ArgumentOutOfRangeException>(() => BinarySplitting.Of(Parts(3), atMost)).ParamName);
        Assert.Equal("atMost", Assert.Throws<ArgumentOutOfRangeException>(() => BinarySplitting.WorstCase(3, atMost)).ParamName);
    }

    [Fact]
    public void More_culprits_than_parts_are_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => BinarySplitting.Of(Parts(3), 4));

    static int Search(int parts, int atMost, int tied) =>
        SearchFor(parts, atMost, [.. Parts(parts).Where((_, i) => (tied >> i & 1) != 0)]);

    static int SearchFor(int parts, int atMost, HashSet<string> tied)
    {
        var trials = 0;
        var search = BinarySplitting.Of(Parts(parts), atMost);
        for (; !search.IsDone; trials++) search = search.After(search.Next.Any(tied.Contains));
        Assert.Equal(tied.Order(StringComparer.Ordinal), search.Tied.Order(StringComparer.Ordinal));
        return trials;
    }
}
