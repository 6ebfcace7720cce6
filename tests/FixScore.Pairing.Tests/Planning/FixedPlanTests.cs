namespace FixScore.Pairing.Tests.Planning;

public sealed class FixedPlanTests
{
    // Separating systems (Katona 1966, J. Combin. Theory 1, from memory): ceil(log2(n + 1)) trials part one culprit or none.
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    [InlineData(3, 2)]
    [InlineData(4, 3)]
    [InlineData(7, 3)]
    [InlineData(8, 4)]
    [InlineData(19, 5)]
    [InlineData(31, 5)]
    [InlineData(32, 6)]
    public void One_culprit_or_none_takes_as_many_trials_as_a_separating_system(int candidates, int trials)
    {
        var plan = FixedPlan.Of(TieBelief.Uniform(Beliefs.Ids(candidates), 0, 1));
        Assert.Equal((trials, true), (plan.Trials.Length, plan.IsOptimal));
        TellsAllApart(plan, candidates + 1);
    }

    // The same without "none": ceil(log2 n).
    [Theory]
    [InlineData(2, 1)]
    [InlineData(8, 3)]
    [InlineData(9, 4)]
    public void Exactly_one_culprit_takes_one_word_less(int candidates, int trials)
    {
        var plan = FixedPlan.Of(TieBelief.Uniform(Beliefs.Ids(candidates), 1, 1));
        Assert.Equal((trials, true), (plan.Trials.Length, plan.IsOptimal));
        TellsAllApart(plan, candidates);
    }

    // 1 + n + n (n - 1) / 2 sets of up to two.
    [Theory]
    [InlineData(5, 16)]
    [InlineData(8, 37)]
    [InlineData(19, 191)]
    [InlineData(40, 821)]
    public void Up_to_two_culprits_are_told_apart_by_fewer_trials_than_candidates(int candidates, int sets)
    {
        var plan = FixedPlan.Of(TieBelief.Uniform(Beliefs.Ids(candidates), 0, 2));
        TellsAllApart(plan, sets);
        Assert.InRange(plan.Trials.Length, plan.Bound, candidates);
    }

    [Fact]
    public void What_is_known_already_is_not_tried_again()
    {
        var plan = FixedPlan.Of(TieBelief.Uniform(Beliefs.Ids(6), 0, 1) with { Flagged = [["p1", "p2", "p3", "p4"]] });
        Assert.Equal(2, plan.Trials.Length);
        Assert.Equal("p1 p2 p3 p4", plan.Outcomes.Select(outcome => Assert.Single(outcome.Tied)).Joined());
        Assert.DoesNotContain(plan.Trials, trial => trial.Contains("p0") || trial.Contains("p5"));
    }

    // By hand: words in the order of how many ones they have, one bit a trial; without "none" the empty word is one of them.
    [Theory]
    [InlineData(3, 0, "p0 p2|p1 p2")]
    [InlineData(4, 0, "p0 p3|p1 p3|p2")]
    [InlineData(3, 1, "p1|p2")]
    [InlineData(4, 1, "p1 p3|p2 p3")]
    public void Few_parts_are_moved_at_once(int candidates, int atLeast, string trials) =>
        Assert.Equal(trials, string.Join('|', FixedPlan.Of(TieBelief.Uniform(Beliefs.Ids(candidates), atLeast, 1)).Trials.Select(trial => trial.Joined())));

    [Fact]
    public void Where_there_are_too_many_sets_to_list_each_candidate_is_tried_alone()
    {
        var plan = FixedPlan.Of(TieBelief.Uniform(Beliefs.Ids(12), 0, 12));
        Assert.Equal(Beliefs.Ids(12), plan.Trials.Select(trial => trial.Joined()));
        Assert.Equal((0, 12, false), (plan.Bound, plan.AtMost, plan.IsOptimal));
        Assert.Empty(plan.Outcomes);
    }

    // 2,000 sets are listed, one more is not: 1 + 62 + 62 x 61 / 2 = 1,954 and 1 + 63 + 63 x 62 / 2 = 2,017.
    [Theory]
    [InlineData(62, 1954)]
    [InlineData(63, 0)]
    public void Up_to_two_thousand_sets_are_listed(int candidates, int listed) => Assert.Equal(listed, FixedPlan.Of(TieBelief.Uniform(Beliefs.Ids(candidates), 0, 2)).Outcomes.Length);

    [Fact]
    public void What_is_tied_for_certain_counts_among_those_that_can_be()
    {
        var plan = FixedPlan.Of(TieBelief.Uniform(Beliefs.Ids(4), 0, 2) with { Flagged = [["p1"]] });
        Assert.Equal((2, "p1|p1 p0|p1 p2|p1 p3"), (plan.AtMost, string.Join('|', plan.Outcomes.Select(outcome => outcome.Tied.OrderBy(id => id != "p1").Joined()))));
    }

    // By hand: p0 goes in (1 s); p0 goes back and p1 goes in (4 s); p1 goes back and p2 goes in (16 s).
    [Fact]
    public void Seconds_are_those_of_what_changes_place_between_trials()
    {
        var costs = new Given { ["p0"] = 1, ["p1"] = 2, ["p2"] = 8, ["p0 p1"] = 4, ["p1 p2"] = 16 };
        Assert.Equal(21m, FixedPlan.Of(TieBelief.Uniform(Beliefs.Ids(3), 0, 3), costs).Seconds);
        Assert.Null(FixedPlan.Of(TieBelief.Uniform(Beliefs.Ids(3), 0, 3)).Seconds);
    }

    [Fact]
    public void A_trial_without_a_time_leaves_the_whole_without() =>
        Assert.Null(FixedPlan.Of(TieBelief.Uniform(Beliefs.Ids(3), 0, 3), new Given { ["p0"] = 1, ["p0 p1"] = 4 }).Seconds);

    sealed class Given : Dictionary<string, decimal?>, IRebuildCosts
    {
        public decimal? SecondsToExchange(System.Collections.Immutable.ImmutableArray<string> candidates) => this.GetValueOrDefault(string.Join(' ', candidates));
    }

    static void TellsAllApart(FixedPlan plan, int sets)
    {
        Assert.Equal(sets, plan.Outcomes.Length);
        Assert.Equal(sets, plan.Outcomes.Select(outcome => string.Concat(outcome.Flagged.Select(flagged => flagged ? '1' : '0'))).Distinct().Count());
        Assert.All(plan.Outcomes, outcome => Assert.Equal(plan.Trials.Select(trial => trial.Any(outcome.Tied.Contains)), outcome.Flagged));
    }
}
