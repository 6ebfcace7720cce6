using System.Collections.Immutable;

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

    // Skewed guesses make the three orders differ, and where the search is cut short one of them is the plan.
    [Theory]
    [InlineData("0.9 0.05 0.6 0.3 0.02 0.5 0.11 0.4 0.7", "", "6.132228..6.849063/16/923.687:p0 2.135431..6.8705/15/740.69:p1 p3 p4 p6 9..9/9/771.36:p0")]
    [InlineData("0.02 0.03 0.04 0.05 0.06 0.07 0.08 0.09 0.1", "", "2.890577..2.952649/31/1085.56:p0 p1 p2 p3 p4 p5 p6 p7 p8 1.002937..4.714801/23/638.714:p0 p1 p2 p3 p4 9..9/9/711.48:p0")]
    [InlineData("0.1 0.02 0.3 0.04 0.2 0.06 0.25", "p0 p1 p2|p2 p3 p4|p5 p6", "2.806254..3.843064/17/186.44:p2 0.982189..3.975801/14/171.856:p2 7..6.144541/7/209.577:p2")]
    [InlineData("0.5 0.02 0.3 0.6 0.2 0.06 0.25", "p0 p1 p2|p4 p5 p6", "4.66828..5.078237/12/243.389:p1 p2 1.633898..5.325285/10/224.608:p1 p2 7..6.345063/7/241.637:p0")]
    public void A_plan_without_search_is_what_it_was(string probabilities, string flags, string plans)
    {
        var belief = Beliefs.Independent([.. probabilities.Split(' ').Select(each => decimal.Parse(each, System.Globalization.CultureInfo.InvariantCulture))]) with
        {
            Flagged = [.. flags.Split('|', StringSplitOptions.RemoveEmptyEntries).Select(flag => flag.Split(' ').ToImmutableArray())],
        };
        Assert.Equal(plans, string.Join(' ', Enum.GetValues<PlanObjective>().Select(objective => AdaptivePlan.Of(belief, objective, new Weighed(), effort: 1)).Select(plan =>
            FormattableString.Invariant($"{plan.Bound:0.######}..{plan.Cost.Trials:0.######}/{plan.Cost.MostTrials}/{plan.Cost.Seconds:0.###}:{plan.Next()!.Value.Joined()}"))));
    }

    // Seconds as a sum of weights, so that no two sets take the same.
    sealed class Weighed : IRebuildCosts
    {
        public decimal? SecondsToExchange(ImmutableArray<string> candidates) =>
            20 + candidates.Sum(id => 1 << int.Parse(id.AsSpan(1), System.Globalization.CultureInfo.InvariantCulture));
    }

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
