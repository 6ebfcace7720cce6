namespace FixScore.Pairing.Tests.Planning;

/// <summary>Plans against what is known of group testing.</summary>
public sealed class KnownPlanTests
{
    // Bisection of equally probable culprits: worst case ceil(log2 n), expected (n k - (2^k - n)) / n with k = ceil(log2 n);
    // the path lengths of a binary tree with n leaves (Knuth, The Art of Computer Programming 3, 6.2.1; from memory).
    [Theory]
    [InlineData(2, 1, 1, 1)]
    [InlineData(3, 2, 5, 3)]
    [InlineData(5, 3, 12, 5)]
    [InlineData(7, 3, 20, 7)]
    [InlineData(8, 3, 3, 1)]
    [InlineData(10, 4, 17, 5)]
    [InlineData(12, 4, 11, 3)]
    [InlineData(16, 4, 4, 1)]
    [InlineData(24, 5, 14, 3)]
    [InlineData(32, 5, 5, 1)]
    public void One_culprit_is_found_by_bisection(int candidates, int worst, int numerator, int denominator)
    {
        var plan = AdaptivePlan.Of(TieBelief.Uniform(Beliefs.Ids(candidates), 1, 1));
        Assert.Equal(worst, plan.Cost.MostTrials);
        Assert.Equal((decimal)numerator / denominator, plan.Cost.Trials, 18);
        Assert.True(plan.IsOptimal);
    }

    // D. A. Huffman, Proc. IRE 40 (1952): the first example is the code of five messages in textbooks after him (from memory).
    [Theory]
    [InlineData("0.4 0.2 0.2 0.1 0.1", "2.2")]
    [InlineData("0.5 0.25 0.125 0.125", "1.75")]
    public void One_culprit_of_unequal_weight_costs_what_a_huffman_code_costs(string weights, string trials)
    {
        var plan = AdaptivePlan.Of(Beliefs.OneOf([.. weights.Split(' ').Select(Number)]));
        Assert.Equal(Number(trials), plan.Cost.Trials, 18);
        Assert.True(plan.IsOptimal);
    }

    // n + 1 outcomes need ceil(log2(n + 1)) answers (counting bound, common practice).
    [Theory]
    [InlineData(1, 1)]
    [InlineData(3, 2)]
    [InlineData(4, 3)]
    [InlineData(7, 3)]
    [InlineData(8, 4)]
    [InlineData(15, 4)]
    [InlineData(19, 5)]
    public void One_culprit_or_none_takes_as_many_trials_as_its_outcomes_have_bits(int candidates, int worst)
    {
        var plan = AdaptivePlan.Of(TieBelief.Uniform(Beliefs.Ids(candidates), 0, 1), PlanObjective.WorstCase);
        Assert.Equal((worst, true), (plan.Cost.MostTrials, plan.IsOptimal));
    }

    // Least worst cases for up to two culprits, by exhaustive search over all adaptive plans (values as in Du and Hwang,
    // Combinatorial Group Testing and Its Applications; from memory, recomputed).
    [Theory]
    [InlineData(3, 2, 2, 2, 3)]
    [InlineData(4, 2, 3, 3, 4)]
    [InlineData(5, 3, 3, 4, 5)]
    [InlineData(6, 3, 3, 5, 5)]
    public void Few_culprits_take_the_known_number_of_trials_at_worst(int candidates, int one, int oneOrNone, int two, int upToTwo)
    {
        Assert.Equal(one, Worst(TieBelief.Uniform(Beliefs.Ids(candidates), 1, 1)));
        Assert.Equal(oneOrNone, Worst(TieBelief.Uniform(Beliefs.Ids(candidates), 0, 1)));
        Assert.Equal(two, Worst(TieBelief.Uniform(Beliefs.Ids(candidates), 2, 2)));
        Assert.Equal(upToTwo, Worst(TieBelief.Uniform(Beliefs.Ids(candidates), 0, 2)));
    }

    // P. Ungar, The cutoff point for group testing, Comm. Pure Appl. Math. 13 (1960), from memory: testing one by one is best
    // just when the probability is at least (3 - sqrt 5) / 2 = 0.381966...
    [Theory]
    [InlineData("0.381", false)]
    [InlineData("0.382", true)]
    [InlineData("0.6", true)]
    public void One_at_a_time_is_best_from_ungars_cutoff_on(string probability, bool isBest)
    {
        var plan = AdaptivePlan.Of(Beliefs.Independent(2, Number(probability)));
        Assert.Equal(isBest, plan.Cost.Trials == 2);
        Assert.Equal(2, plan.OneAtATime.Trials);
    }

    // Two candidates at p = 0.1, by hand: both at once is clean with 0.81; else the first alone, and when that is flagged the
    // second as well: 1 + 0.19 + 0.1 = 1.29 trials.
    [Fact]
    public void Two_improbable_candidates_are_tried_together()
    {
        var plan = AdaptivePlan.Of(Beliefs.Independent(2, 0.1m));
        Assert.Equal(1.29m, plan.Cost.Trials);
        Assert.Equal("p0 p1", plan.Next()!.Value.Joined());
        Assert.Equal("p0", plan.Next(false)!.Value.Joined());
        Assert.Equal("p1", plan.Next(false, false)!.Value.Joined());
        Assert.Null(plan.Next(true));
        Assert.Null(plan.Next(false, true));
    }

    static int Worst(TieBelief belief) => AdaptivePlan.Of(belief, PlanObjective.WorstCase) is { IsOptimal: true } plan ? plan.Cost.MostTrials : -1;

    static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
