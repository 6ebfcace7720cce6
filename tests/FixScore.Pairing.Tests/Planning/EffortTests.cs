namespace FixScore.Pairing.Tests.Planning;

/// <summary>
/// How many trials a search weighs before it has proven its plan. No source: counted once and written down, so that a change which makes searches longer, though not wrong, is seen.
/// Fewer is better; write down the new number then.
/// </summary>
public sealed class EffortTests
{
    [Theory]
    [InlineData(3, 6, "64 1")]
    [InlineData(4, 6, "5450 1")]
    [InlineData(8, 5, "48 48")]
    [InlineData(17, 5, "167 1")]
    [InlineData(23, 6, "469 1")]
    public void The_least_effort_that_proves_a_plan_is_what_it_was(int seed, int candidates, string efforts) => Assert.Equal(efforts, string.Join(' ',
        new[] { PlanObjective.Rebuilds, PlanObjective.WorstCase }.Select(objective => LeastEffort(Beliefs.Random(seed, candidates), objective))));

    [Theory]
    [InlineData(11, "3.545455..3.545455 3.545455..3.545455 3.545455..3.545455")]
    [InlineData(13, "3.108925..4.515 3.108925..4.515 3.108925..4.515")]
    [InlineData(15, "3.857143..3.928571 3.857143..3.928571 3.857143..3.857143")]
    public void What_a_plan_cut_short_costs_and_proves_is_what_it_was(int seed, string plans) => Assert.Equal(plans, string.Join(' ',
        from effort in (int[])[1, 50, 500]
        let plan = AdaptivePlan.Of(Beliefs.Random(seed, 9), effort: effort)
        select FormattableString.Invariant($"{plan.Bound:0.######}..{plan.Cost.Trials:0.######}")));

    static int LeastEffort(TieBelief belief, PlanObjective objective)
    {
        var enough = 1;
        while (!AdaptivePlan.Of(belief, objective, effort: enough).IsOptimal) enough *= 2;
        var (least, most) = (enough / 2, enough);
        while (most - least > 1)
        {
            var middle = (least + most) / 2;
            if (AdaptivePlan.Of(belief, objective, effort: middle).IsOptimal) most = middle;
            else least = middle;
        }
        return most;
    }
}
