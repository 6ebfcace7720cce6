namespace FixScore.Pairing.Tests.Planning;

/// <summary>What may be believed of candidates, and what a plan knows at its start.</summary>
public sealed class BeliefTests
{
    [Theory]
    [InlineData("0", "0.5")]
    [InlineData("0.5", "1")]
    [InlineData("0", "1")]
    [InlineData("-0.1", "0.5")]
    public void What_is_certain_is_no_candidate(string one, string other) => Assert.Contains(
        "Weights must be above 0.", Assert.Throws<ArgumentException>(() => Beliefs.Independent(decimal.Parse(one, System.Globalization.CultureInfo.InvariantCulture), decimal.Parse(other, System.Globalization.CultureInfo.InvariantCulture))).Message, StringComparison.Ordinal);

    [Fact]
    public void There_are_64_candidates_at_most()
    {
        Assert.Equal(64, TieBelief.Uniform(Beliefs.Ids(64), 0, 1).Candidates.Length);
        Assert.Equal("candidates", Assert.Throws<ArgumentOutOfRangeException>(() => TieBelief.Uniform(Beliefs.Ids(65), 0, 1)).ParamName);
    }

    [Theory]
    [InlineData(2, 3, 5, 2, 3)]
    [InlineData(2, 3, 1, 1, 1)]
    [InlineData(0, 9, 5, 0, 4)]
    public void A_limit_only_lowers_what_was_believed(int atLeast, int atMost, int limit, int least, int most)
    {
        var belief = TieBelief.Uniform(Beliefs.Ids(4), atLeast, atMost).WithAtMost(limit);
        Assert.Equal((least, most), (belief.AtLeast, belief.AtMost));
    }

    [Theory]
    [InlineData("p1 p2", 1, "", "p0 p3", 2)]
    [InlineData("p1", 1, "p1", "p0 p2 p3", 0)]
    [InlineData("p1", 2, "p1", "", 3)]
    public void What_follows_at_once_is_known_at_the_start(string flag, int atMost, string tied, string cleared, int open)
    {
        var start = AdaptivePlan.Of(TieBelief.Uniform(Beliefs.Ids(4), 0, atMost) with { Flagged = [[.. flag.Split(' ')]] }).Start;
        Assert.Equal((tied, cleared, open), (start.Tied.Joined(), start.Cleared.Joined(), start.Open));
    }

    // By hand: exactly one of four; half of them is tried, then one of the half.
    [Fact]
    public void Each_branch_says_what_it_settles()
    {
        var start = AdaptivePlan.Of(Beliefs.OneOf(1, 1, 1, 1)).Start;
        Assert.Equal("p0 p1", start.Next!.Foreign.Joined());
        Assert.Equal(("", "p0 p1", 2), Of(start.Next.OnClean));
        Assert.Equal(("", "p2 p3", 2), Of(start.Next.OnFlagged));
        Assert.Equal(("p3", "p2", 0), Of(start.Next.OnClean.Next!.OnClean));
        Assert.Equal(("p0", "p1", 0), Of(start.Next.OnFlagged.Next!.OnFlagged));
        Assert.Equal((2m, 1m, 0m), (start.ExpectedTrials, start.Next.OnClean.ExpectedTrials, start.Next.OnClean.Next.OnClean.ExpectedTrials));
    }

    [Theory]
    [InlineData(0, false, false)]
    [InlineData(1, true, false)]
    [InlineData(2, true, true)]
    public void A_tree_goes_as_deep_as_asked(int depth, bool first, bool second)
    {
        var tree = AdaptivePlan.Of(Beliefs.OneOf(1, 1, 1, 1)).Tree(depth);
        Assert.Equal((first, second, second), (tree.Next is not null, tree.Next?.OnClean.Next is not null, tree.Next?.OnFlagged.Next is not null));
    }

    [Fact]
    public void Who_is_believed_to_be_no_candidate_is_named() => Assert.Contains(
        "'x' is no candidate.", Assert.Throws<ArgumentException>(() => AdaptivePlan.Of(Beliefs.Independent(2, 0.5m) with { Flagged = [["x"]] })).Message, StringComparison.Ordinal);

    [Fact]
    public void A_belief_that_allows_nothing_is_refused_in_words() => Assert.Contains(
        "No set of tied parts is possible under this belief.",
        Assert.Throws<ArgumentException>(() => AdaptivePlan.Of(TieBelief.Uniform(["a", "b"], 0, 0) with { Flagged = [["a", "b"]] })).Message, StringComparison.Ordinal);

    static (string, string, int) Of(PlanBranch branch) => (branch.Tied.Joined(), branch.Cleared.Joined(), branch.Open);
}
