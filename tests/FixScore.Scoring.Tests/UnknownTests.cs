using FixScore.Records;
using FixScore.Testing;

namespace FixScore.Scoring.Tests;

public sealed class UnknownTests
{
    static Profile Two(string policy) => Make.Profile(Make.Group("weighted-arithmetic", Make.Leaf("a", "1", "t.a"), Make.Leaf("b", "1", "t.b", policy)));

    [Fact]
    public void What_is_unknown_widens_the_total_to_an_interval()
    {
        var score = Make.Record().Observe("t.a", (Quantity)80).Score(Two("\"unknown\": \"interval\""));
        Assert.Equal(new Interval(40, 90), score.Total);
        Assert.Equal(0.5m, score.Coverage);
        Assert.Equal("the observation", Assert.Single(score.At("root/b").Missing).What);
    }

    // Twice 0 to 10 can move the total by 20, half of 40 to 100 by 30.
    [Fact]
    public void Under_a_sum_what_is_covered_is_what_can_move_the_total()
    {
        var profile = Make.Profile(Make.Group("sum",
            Make.Leaf("a", "2", "t.a", "\"scale\": { \"min\": 0, \"max\": 10 }"), Make.Leaf("b", "0.5", "t.b", "\"scale\": { \"min\": 40, \"max\": 100 }")));
        Assert.Equal(0.4m, Make.Record().Observe("t.a", (Quantity)5).Score(profile).Coverage);
        Assert.Equal(0.6m, Make.Record().Observe("t.b", (Quantity)50).Score(profile).Coverage);
    }

    [Fact]
    public void A_criterion_that_failed_covers_nothing_and_its_fault_says_how()
    {
        var score = Make.Record().Observe("t.a", (Quantity)80).Observe("t.b", "throws").Score(Two(""), ScoringMode.Tolerant);
        Assert.Equal(0.5m, score.Coverage);
        Assert.Equal(new NamedValue("exception", "InvalidOperationException"), Assert.Single(Assert.Single(score.Faults).Values));
    }

    [Fact]
    public void A_profile_may_take_the_worst() =>
        Assert.Equal((Interval)40, Make.Record().Observe("t.a", (Quantity)80).Score(Two("\"unknown\": \"worst\"")).Total);

    [Fact]
    public void A_profile_may_leave_it_out_but_it_is_not_covered()
    {
        var score = Make.Record().Observe("t.a", (Quantity)80).Score(Two("\"unknown\": \"skip\""));
        Assert.Equal((Interval)80, score.Total);
        Assert.Equal(0.5m, score.Coverage);
        Assert.Equal((1m, 0m), (score.At("root/a").Share, score.At("root/b").Share));
        Assert.Null(score.At("root/b").Contribution);
    }

    [Fact]
    public void A_range_counts_from_end_to_end_and_is_never_skipped()
    {
        var score = Make.Record().Observe("t.a", (Quantity)80).Observe("t.b", new Quantity(20, 60)).Score(Two("\"unknown\": \"skip\""));
        Assert.Equal(new Interval(50, 70), score.Total);
    }

    [Fact]
    public void A_total_with_nothing_left_is_the_whole_scale() =>
        Assert.Equal(new Interval(0, 100), Make.Record().Score(Make.Profile(Make.Group("minimum", Make.Leaf("a", "1", "t.a", "\"unknown\": \"skip\"")))).Total);

    [Theory]
    [InlineData("skip", 80)]
    [InlineData("top", 90)]
    public void What_does_not_arise_is_left_out_or_counts_as_the_best(string policy, int expected)
    {
        var record = Make.Record().Observe("t.a", (Quantity)80).Observe("t.b", "not-applicable");
        var score = record.Score(Two($"\"notApplicable\": \"{policy}\""));
        Assert.Equal((Interval)expected, score.Total);
        Assert.Equal(1m, score.Coverage);
    }

    [Fact]
    public void A_failing_criterion_refuses_a_strict_run_and_names_itself()
    {
        var record = Make.Record().Observe("t.a", (Quantity)80).Observe("t.b", "throws");
        var fault = Assert.Single(Assert.Throws<CriterionFaultException>(() => record.Score(Two(""))).Faults);
        Assert.Equal(("root/b", "t.b", "criterion-threw"), (fault.Node, fault.Criterion, fault.Code));
    }

    [Fact]
    public void A_tolerant_run_gives_it_the_whole_scale_whatever_the_policy_and_says_so()
    {
        var record = Make.Record().Observe("t.a", (Quantity)80).Observe("t.b", "throws");
        var score = record.Score(Two("\"unknown\": \"skip\""), ScoringMode.Tolerant);
        Assert.Equal(new Interval(40, 90), score.Total);
        Assert.Equal("root/b", Assert.Single(score.Faults).Node);
        Assert.Equal(ScoringMode.Tolerant, score.Mode);
    }

    [Fact]
    public void A_score_outside_the_scale_is_a_fault()
    {
        var record = Make.Record().Observe("t.a", (Quantity)80).Observe("t.b", (Quantity)101);
        Assert.Equal("score-left-scale", Assert.Single(record.Score(Two(""), ScoringMode.Tolerant).Faults).Code);
    }

    [Fact]
    public void Cancelling_ends_the_run() => Assert.Throws<OperationCanceledException>(() =>
        Scorer.Score(Make.Record().Document(), Two(""), cancellation: new CancellationToken(canceled: true)));
}
