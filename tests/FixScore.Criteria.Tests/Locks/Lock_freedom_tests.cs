using FixScore.Criteria.Locks;

namespace FixScore.Criteria.Tests.Locks;

/// <summary>The points are the criterion's own judgement; there is no source to compare them with.</summary>
public sealed class Lock_freedom_tests
{
    static readonly LockFreedomCriterion Criterion = new();

    static readonly LockTrial Free = new()
    {
        Id = "unlock", Unit = "unit-a", From = LockState.Locked, To = LockState.Unlocked,
        Outcome = LockOutcome.Done, WaitDays = 0, WipesData = false, WarrantyNotice = false, Losses = [],
    };

    static readonly LockTrial Refused = Free with { Id = "refused", Outcome = LockOutcome.RefusedByMaker };

    [Fact]
    public void A_lock_that_opens_at_no_cost_has_the_best_of_the_scale() => Scores(100, Free);

    [Theory]
    [InlineData(LockOutcome.Done, 100)]
    [InlineData(LockOutcome.Failed, 20)]
    [InlineData(LockOutcome.RefusedByMaker, 0)]
    public void The_outcome_is_where_points_start(LockOutcome outcome, int points) => Scores(points, Free with { Outcome = outcome });

    [Fact]
    public void Each_cost_takes_off_what_its_level_leaves()
    {
        Scores(90, Free with { WaitDays = 7 });
        Scores(90, Free with { WipesData = true });
        Scores(70, Free with { WarrantyNotice = true });
        Scores(50, Free with { WaitDays = 7, WipesData = true, WarrantyNotice = true });
    }

    [Theory]
    [InlineData(Recovery.OnRelock, 95)]
    [InlineData(Recovery.OnReset, 90)]
    [InlineData(Recovery.OnService, 85)]
    [InlineData(Recovery.Never, 80)]
    public void A_lost_function_costs_by_when_it_comes_back(Recovery recovers, int points)
    {
        Scores(points, Losing(recovers));
        Scores(2 * points - 100, Losing(recovers, recovers));
    }

    [Fact]
    public void Costs_never_go_below_the_lowest_of_the_scale() => Scores(0, Losing([.. Enumerable.Repeat<OneOf<Recovery>>(Recovery.Never, 9)]));

    [Fact]
    public void Where_nothing_was_opened_waiting_data_and_warranty_are_not_asked_for()
    {
        var refused = Free with { Outcome = LockOutcome.RefusedByMaker, WaitDays = null, WipesData = null, WarrantyNotice = null };
        Scores(0, refused);
        Assert.Empty(Criterion.On(With(refused)).Missing);
        Assert.Equal(["opening"], Criterion.On(With(refused)).Reasons.Select(reason => reason.Code));
    }

    [Fact]
    public void What_was_not_recorded_gives_a_range_and_is_missing()
    {
        Scores(new(20, 100), Free with { WaitDays = null });
        Scores(new(50, 90), Free with { WaitDays = new(7, 30) });
        Scores(new(20, 90), Free with { WaitDays = new(7, null) });
        Scores(new(90, 100), Free with { WipesData = null });
        Scores(new(70, 100), Free with { WarrantyNotice = null });
        Scores(new(80, 95), Losing(default(OneOf<Recovery>)));
        Scores(new(0, 100), Free with { Outcome = default });
        var open = Free with { Outcome = default, WaitDays = new(7, 30), WipesData = null, WarrantyNotice = null, Losses = [new() { Function = "payment" }] };
        Assert.Equal(["outcome", "waitDays", "wipesData", "warrantyNotice", "recovers"], Criterion.On(With(open)).Missing.Select(missing => missing.What));
    }

    [Fact]
    public void Of_several_trials_the_worst_counts_unless_a_profile_says_otherwise()
    {
        Scores(0, Free, Refused);
        Assert.Equal(100, Criterion.On(With(Free, Refused), (LockFreedomOptions.Several, SeveralTrials.Best)).Score);
        Assert.Equal(new Interval(0, 100), Criterion.On(With(Free, Refused), (LockFreedomOptions.Several, SeveralTrials.Any)).Score);
    }

    [Fact]
    public void Closing_the_lock_again_is_no_attempt_to_open_it()
    {
        var relock = Free with { Id = "relock", From = LockState.Unlocked, To = LockState.Relocked, Outcome = LockOutcome.Failed };
        Scores(100, Free, relock);
        Assert.Equal(OutcomeKind.Unknown, Criterion.On(With(relock)).Kind);
        Scores(100, Free with { From = LockState.Relocked });
    }

    [Fact]
    public void A_recovery_that_another_trial_contradicts_is_unknown()
    {
        var relock = Losing(Recovery.Never) with { Id = "relock", From = LockState.Unlocked, To = LockState.Relocked };
        var outcome = Criterion.On(With(Losing(Recovery.OnRelock), relock));
        Assert.Equal(new Interval(80, 95), outcome.Score);
        Assert.Equal("recovers: another trial contradicts it", Assert.Single(outcome.Missing).What);
        Assert.Equal(
            "With the lock open function-0 is lost (unlock); when it comes back is unknown, for other trials contradict what is recorded: on-relock.",
            outcome.Because("function-lost").Text);
    }

    [Fact]
    public void Without_an_attempt_the_answer_is_unknown_for_an_empty_list_says_only_that_none_was_made()
    {
        Assert.Equal("locks", Assert.Single(Criterion.On(Sample.Record(Sample.Part("frame"))).Missing).What);
        var none = Criterion.On(With());
        Assert.Equal(OutcomeKind.Unknown, none.Kind);
        Assert.Equal("locks: an attempt to open the boot lock", Assert.Single(none.Missing).What);
    }

    [Fact]
    public void Reasons_tell_each_cost_with_the_points_it_leaves()
    {
        var outcome = Criterion.On(With(Losing(Recovery.OnService) with { WaitDays = 7, WipesData = true }));
        Assert.Equal("In unlock unit unit-a was to be unlocked: done.", outcome.Because("opening").Text);
        Assert.Equal(("Days of waiting that the maker imposes: 7.", (Interval)90), (outcome.Because("waiting").Text, outcome.Because("waiting").Points));
        Assert.Equal("Opening the lock wipes the data: yes.", outcome.Because("wiping").Text);
        Assert.Equal("The maker says that the warranty ends: no.", outcome.Because("warranty-notice").Text);
        Assert.Equal("With the lock open function-0 is lost (unlock); when it comes back: on-service.", outcome.Because("function-lost").Text);
        Assert.Equal("Days of waiting that the maker imposes: 7 or more.", Criterion.On(With(Free with { WaitDays = new(7, null) })).Because("waiting").Text);
    }

    static void Scores(Interval expected, params LockTrial[] trials)
    {
        var outcome = Criterion.On(With(trials));
        Assert.Equal(expected, outcome.Score);
        outcome.PointsInto(With(trials));
    }

    static LockTrial Losing(params OneOf<Recovery>[] recoveries) => Free with
    {
        Losses = [.. recoveries.Select((recovers, i) => new FunctionLoss { Function = $"function-{i}", Recovers = recovers })],
    };

    static TeardownRecord With(params LockTrial[] trials) => Sample.Record(Sample.Part("frame")) with { Locks = EntryList.Of(trials.ToImmutableArray()) };
}
