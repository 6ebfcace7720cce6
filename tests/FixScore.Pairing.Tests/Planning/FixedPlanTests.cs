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

    static void TellsAllApart(FixedPlan plan, int sets)
    {
        Assert.Equal(sets, plan.Outcomes.Length);
        Assert.Equal(sets, plan.Outcomes.Select(outcome => string.Concat(outcome.Flagged.Select(flagged => flagged ? '1' : '0'))).Distinct().Count());
        Assert.All(plan.Outcomes, outcome => Assert.Equal(plan.Trials.Select(trial => trial.Any(outcome.Tied.Contains)), outcome.Flagged));
    }
}
