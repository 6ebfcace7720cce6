using System.Collections.Immutable;
using CsCheck;

namespace FixScore.Pairing.Tests.Planning;

public sealed class MinutesTests
{
    [Fact]
    public void A_plan_by_minutes_never_takes_more_minutes_than_one_by_rebuilds() => Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[0, 5_000]).Sample((seed, effort) =>
    {
        var belief = Beliefs.Random(seed, 6);
        if (belief.Flagged.Length > belief.AtMost) return;
        var costs = new Layers(new Random(seed));
        var (byMinutes, byRebuilds) = (AdaptivePlan.Of(belief, PlanObjective.Minutes, costs, effort), AdaptivePlan.Of(belief, PlanObjective.Rebuilds, costs, effort));
        Assert.True(byMinutes.Cost.Minutes <= byRebuilds.Cost.Minutes + 0.000000000001m);
        Assert.True(byMinutes.Bound <= byMinutes.Cost.Minutes);
    }, iter: Runs.Of(40));

    // By hand: the deep part takes 100 s each time it changes place, the outer one 10 s; both 100 s. Deep first at p = 1/2:
    // 100, then the outer one from a clean unit 10 or with the deep one to be put back 100; 155 s. Outer first: 10, then 100.
    [Fact]
    public void The_quick_part_goes_first_when_the_deep_one_opens_it_anyway()
    {
        var plan = AdaptivePlan.Of(Beliefs.Independent(0.5m, 0.5m), PlanObjective.Minutes, new Given { ["p0"] = 100, ["p1"] = 10, ["p0 p1"] = 100 });
        Assert.Equal("p1", plan.Next()!.Value.Joined());
        Assert.Equal(110m, plan.Cost.Seconds);
        Assert.Equal(155m, plan.OneAtATime.Seconds);
    }

    [Fact]
    public void Without_times_a_plan_goes_by_rebuilds_and_tells_no_minutes()
    {
        var plan = AdaptivePlan.Of(Beliefs.Independent(3, 0.2m), PlanObjective.Minutes, new Given { ["p0"] = 5 });
        Assert.Equal((PlanObjective.Rebuilds, null, null), (plan.Objective, plan.Cost.Minutes, plan.OneAtATime.Seconds));
    }

    [Theory]
    [InlineData(5, null, 9)]
    [InlineData(5, 5, null)]
    [InlineData(null, null, 9)]
    public void Each_part_alone_and_all_together_must_have_a_time(int? first, int? second, int? both)
    {
        var plan = AdaptivePlan.Of(Beliefs.Independent(2, 0.2m), PlanObjective.Minutes, new Given { ["p0"] = first, ["p1"] = second, ["p0 p1"] = both });
        Assert.Equal((PlanObjective.Rebuilds, null), (plan.Objective, plan.Cost.Seconds));
    }

    [Fact]
    public void What_is_settled_already_takes_no_time()
    {
        var plan = AdaptivePlan.Of(TieBelief.Uniform(["p0"], 1, 1), PlanObjective.Minutes, new Given());
        Assert.Equal((PlanObjective.Minutes, 0m, 0m, true), (plan.Objective, plan.Cost.Seconds, plan.Bound, plan.IsOptimal));
        Assert.Null(AdaptivePlan.Of(TieBelief.Uniform(["p0"], 1, 1)).Cost.Seconds);
    }

    // Beyond eight parts each set that changes place would ask for a route of its own.
    [Theory]
    [InlineData(8, true)]
    [InlineData(9, false)]
    public void Plans_by_minutes_are_proven_for_few_parts(int parts, bool isOptimal)
    {
        var plan = AdaptivePlan.Of(TieBelief.Uniform(Beliefs.Ids(parts), 1, 1), PlanObjective.Minutes, new Weighed());
        Assert.Equal(isOptimal, plan.IsOptimal);
        Assert.InRange(plan.Bound, 1m, plan.Cost.Minutes!.Value);
    }

    sealed class Weighed : IRebuildCosts
    {
        public decimal? SecondsToExchange(ImmutableArray<string> candidates) => 60 + candidates.Sum(id => 7 * int.Parse(id.AsSpan(1), System.Globalization.CultureInfo.InvariantCulture));
    }

    /// <summary>Parts behind one another: to move one, all above it are opened.</summary>
    sealed class Layers(Random random) : IRebuildCosts
    {
        readonly int[] depth = [.. Enumerable.Range(0, 20).Select(_ => random.Next(1, 8))];
        readonly int each = random.Next(0, 90);

        public decimal? SecondsToExchange(ImmutableArray<string> candidates) =>
            60 * candidates.Max(id => depth[int.Parse(id.AsSpan(1), System.Globalization.CultureInfo.InvariantCulture)]) + each * candidates.Length;
    }

    sealed class Given : Dictionary<string, decimal?>, IRebuildCosts
    {
        public decimal? SecondsToExchange(ImmutableArray<string> candidates) => this.GetValueOrDefault(string.Join(' ', candidates));
    }
}
