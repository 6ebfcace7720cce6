using CsCheck;

namespace FixScore.Pairing.Tests.Planning;

/// <summary>Plans against plans found by trying everything, and against what they say of themselves.</summary>
public sealed class AdaptivePlanTests
{
    static Gen<TieBelief> Small => Gen.Int[0, int.MaxValue].Select(seed => Beliefs.Random(seed, 4)).Where(belief => LiteralPlan.Sets(belief).Count > 0);

    [Fact]
    public void Expected_trials_are_the_fewest_of_all_plans() => Small.Sample(belief =>
    {
        var plan = AdaptivePlan.Of(belief);
        Assert.True(plan.IsOptimal);
        Assert.Equal(LiteralPlan.Expected(belief), plan.Cost.Trials, 18);
    }, iter: Runs.Of(400));

    [Fact]
    public void Trials_at_worst_are_the_fewest_of_all_plans() => Small.Sample(belief =>
    {
        var plan = AdaptivePlan.Of(belief, PlanObjective.WorstCase);
        Assert.True(plan.IsOptimal);
        Assert.Equal(LiteralPlan.Worst(belief), plan.Cost.MostTrials);
    }, iter: Runs.Of(400));

    [Fact]
    public void The_bound_is_never_above_the_optimum() => Small.Sample(belief =>
    {
        var plan = AdaptivePlan.Of(belief, effort: 1);
        Assert.True(plan.Bound <= LiteralPlan.Expected(belief) + 0.000000000001m);
        Assert.True(plan.Bound <= plan.Cost.Trials);
    }, iter: Runs.Of(400));

    [Fact]
    public void Played_against_every_possible_set_the_plan_costs_what_it_says_and_names_the_set() => Small.Sample(belief =>
    {
        var plan = AdaptivePlan.Of(belief);
        var sets = LiteralPlan.Sets(belief);
        var (sum, worst) = (0m, 0);
        foreach (var (tied, weight) in sets)
        {
            var trials = Play(belief, plan, tied);
            (sum, worst) = (sum + trials * weight, Math.Max(worst, trials));
        }
        Assert.Equal(plan.Cost.Trials, sum / sets.Sum(set => set.Weight), 18);
        Assert.Equal(plan.Cost.MostTrials, worst);
    }, iter: Runs.Of(400));

    [Fact]
    public void A_plan_beyond_the_effort_plays_as_it_says_too()
    {
        var belief = Beliefs.Independent(0.1m, 0.3m, 0.05m, 0.2m, 0.15m, 0.4m, 0.08m, 0.25m, 0.12m) with { Flagged = [["p1", "p2", "p3"], ["p3", "p4", "p5"]] };
        var plan = AdaptivePlan.Of(belief, effort: 1);
        var sets = LiteralPlan.Sets(belief);
        Assert.Equal(plan.Cost.Trials, sets.Sum(set => Play(belief, plan, set.Tied) * set.Weight) / sets.Sum(set => set.Weight), 18);
        Assert.False(plan.IsOptimal);
        Assert.True(plan.Bound <= AdaptivePlan.Of(belief, effort: 50_000).Cost.Trials);
    }

    [Fact]
    public void A_plan_is_never_worse_than_the_naive_ones() => Gen.Int[0, int.MaxValue].Select(seed => Beliefs.Random(seed, 12)).Sample(belief =>
    {
        if (belief.Flagged.Length > belief.AtMost) return;
        var plan = AdaptivePlan.Of(belief, effort: 2_000);
        Assert.True(plan.Cost.Trials <= plan.OneAtATime.Trials + 0.000000000001m);
        Assert.True(plan.Bound <= plan.Cost.Trials);
    }, iter: Runs.Of(100));

    [Fact]
    public void What_cannot_be_is_refused()
    {
        var none = TieBelief.Uniform(["a", "b"], 0, 0) with { Flagged = [["a", "b"]] };
        Assert.Throws<ArgumentException>(() => AdaptivePlan.Of(none));
        Assert.Throws<ArgumentException>(() => AdaptivePlan.Of(Beliefs.Independent(2, 0.5m) with { Flagged = [["x"]] }));
        Assert.Throws<ArgumentException>(() => Beliefs.Independent(1.5m));
    }

    /// <summary>How many trials until the plan ends; what it then holds to be tied must be right.</summary>
    static int Play(TieBelief belief, AdaptivePlan plan, int tied)
    {
        var (branch, outcomes, named) = (plan.Tree(40), 0, new List<string>());
        for (; ; outcomes++)
        {
            named.AddRange(branch.Tied);
            if (branch.Next is not { } trial) break;
            var isFlagged = trial.Foreign.Any(id => (tied >> int.Parse(id.AsSpan(1), System.Globalization.CultureInfo.InvariantCulture) & 1) == 1);
            branch = isFlagged ? trial.OnFlagged : trial.OnClean;
        }
        Assert.True(branch.IsSettled);
        Assert.Equal(belief.Candidates.Where((_, index) => (tied >> index & 1) == 1).Select(each => each.Id), named.Order(StringComparer.Ordinal));
        return outcomes;
    }
}
