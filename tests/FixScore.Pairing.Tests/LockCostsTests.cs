using FixScore.Records;
using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests;

/// <summary>When a loss contradicts a trial is our own rule; there is no source to compare it with.</summary>
public sealed class LockCostsTests
{
    static readonly LockTrial Unlock = new()
    {
        Id = "unlock", Unit = "a", From = LockState.Locked, To = LockState.Unlocked, Outcome = LockOutcome.Done, WaitDays = 7, WipesData = true, Losses = [],
    };

    static readonly LockTrial Relock = Unlock with { Id = "relock", From = LockState.Unlocked, To = LockState.Relocked };

    [Fact]
    public void Trials_are_listed_in_order_with_what_they_cost()
    {
        var costs = Costs([Losing(Unlock, Recovery.Never), Relock, Unlock with { Id = "unlock-b", Unit = "b", Outcome = LockOutcome.RefusedByMaker }]);
        Assert.Equal(["unlock", "relock", "unlock-b"], costs.Trials.Select(cost => cost.Trial.Id));
        Assert.Equal([true, false, true], costs.Trials.Select(cost => cost.Opens));
        Assert.Equal([false, true, false], costs.Trials.Select(cost => cost.Closes));
        Assert.Equal("payment", Assert.Single(costs.Trials[0].Losses).Loss.Function);
    }

    [Fact]
    public void What_comes_back_on_relock_is_contradicted_by_a_relock_trial_that_lists_it()
    {
        var costs = Costs([Losing(Unlock, Recovery.OnRelock), Losing(Relock, Recovery.OnService)]);
        var finding = Assert.Single(costs.Contradictions);
        Assert.Equal("loss-outlasts-recovery", finding.Code);
        Assert.Equal("unlock says that payment is lost (comes back: on relock), yet relock shows it lost when relocked.", finding.Text);
        Assert.Equal("unlock relock", finding.Trials.Joined());
        Assert.Equal(["/locks/0/losses/0", "/locks/1"], finding.Why.Pointers.Select(pointer => pointer.Text));
        var lost = Assert.Single(costs.Trials[0].Losses);
        Assert.Equal((AfterRelock.Lost, true, true), (lost.AfterRelock, lost.IsContradicted, lost.Recovers.IsUnknown));
    }

    [Theory]
    [InlineData(Recovery.OnRelock, SwapResult.Works, SwapProcedure.None, AfterRelock.Works, "")]
    [InlineData(Recovery.OnRelock, SwapResult.Refused, SwapProcedure.None, AfterRelock.Lost, "loss-outlasts-recovery")]
    [InlineData(Recovery.OnReset, SwapResult.Works, SwapProcedure.None, AfterRelock.Works, "loss-not-seen")]
    [InlineData(Recovery.OnReset, SwapResult.Works, SwapProcedure.Reset, AfterRelock.NotSeen, "")]
    [InlineData(Recovery.OnReset, SwapResult.Refused, SwapProcedure.Reset, AfterRelock.NotSeen, "loss-outlasts-recovery")]
    [InlineData(Recovery.OnReset, SwapResult.Works, null, AfterRelock.Works, "")]
    [InlineData(Recovery.OnService, SwapResult.Refused, SwapProcedure.None, AfterRelock.Lost, "")]
    [InlineData(Recovery.OnService, SwapResult.Works, SwapProcedure.Reset, AfterRelock.NotSeen, "loss-not-seen")]
    [InlineData(Recovery.Never, SwapResult.Works, null, AfterRelock.Works, "loss-not-seen")]
    [InlineData(Recovery.Never, SwapResult.Untested, null, AfterRelock.NotSeen, "")]
    public void A_control_in_state_relocked_confirms_or_contradicts(Recovery recovers, SwapResult seen, SwapProcedure? procedure, AfterRelock after, string code)
    {
        var costs = Costs([Losing(Unlock, recovers)], Control(LockState.Relocked, seen) with { Procedure = procedure });
        Assert.Equal(code, string.Join(' ', costs.Contradictions.Select(finding => finding.Code)));
        Assert.Equal(after, Assert.Single(costs.Trials[0].Losses).AfterRelock);
    }

    [Fact]
    public void A_flag_after_a_swap_may_be_the_doing_of_the_swap_but_what_works_works()
    {
        Assert.Empty(Costs([Losing(Unlock, Recovery.OnRelock)], Control(LockState.Relocked, SwapResult.Refused) with { Installed = [new("display", "b")] }).Contradictions);
        Assert.Single(Costs([Losing(Unlock, Recovery.Never)], Control(LockState.Relocked, SwapResult.Works) with { Installed = [new("display", "b")] }).Contradictions);
    }

    [Fact]
    public void The_lock_is_that_of_the_main_board()
    {
        var control = Control(LockState.Relocked, SwapResult.Works);
        Assert.Empty(Costs([Losing(Unlock, Recovery.Never)], control with { Host = "b" }).Contradictions);
        Assert.Single(Costs([Losing(Unlock, Recovery.Never)], control with { Host = "b", Installed = [new("board", "a")] }).Contradictions);
    }

    [Fact]
    public void What_is_lost_works_with_no_open_lock_whenever_it_comes_back() => Assert.Equal(
        "unlock says that payment is lost (comes back: unknown), yet control shows it at work when unlocked.",
        Assert.Single(Costs([Losing(Unlock, default)], Control(LockState.Unlocked, SwapResult.Works) with { Procedure = SwapProcedure.None }).Contradictions).Text);

    [Fact]
    public void A_list_of_recoveries_is_contradicted_only_when_none_can_be()
    {
        OneOf<Recovery> open = new(Recovery.OnRelock, Recovery.Never);
        Assert.Empty(Costs([Losing(Unlock, open)], Control(LockState.Relocked, SwapResult.Works)).Contradictions);
        Assert.Empty(Costs([Losing(Unlock, open), Losing(Relock, Recovery.Never)]).Contradictions);
    }

    [Fact]
    public void Two_trials_that_name_other_recoveries_disagree() => Assert.Equal(
        "unlock says that payment is lost (comes back: on reset), relock says it too (comes back: never).",
        Assert.Single(Costs([Losing(Unlock, Recovery.OnReset), Losing(Relock, Recovery.Never)]).Contradictions).Text);

    [Fact]
    public void What_is_lost_by_relocking_cannot_come_back_on_relock() =>
        Assert.Equal("loss-outlasts-recovery", Assert.Single(Costs([Losing(Relock, Recovery.OnRelock)]).Contradictions).Code);

    [Theory]
    [InlineData(Recovery.Never, true)]
    [InlineData(Recovery.OnService, true)]
    [InlineData(Recovery.OnReset, false)]
    [InlineData(Recovery.OnRelock, false)]
    public void A_relock_trial_that_does_not_list_what_stays_lost_raises_a_doubt(Recovery recovers, bool isDoubtful)
    {
        var costs = Costs([Losing(Unlock, recovers), Relock]);
        Assert.Empty(costs.Contradictions);
        Assert.Equal(isDoubtful ? ["loss-not-listed-again"] : [], costs.Doubts.Select(finding => finding.Code));
        Assert.Equal(AfterRelock.NotListed, Assert.Single(costs.Trials[0].Losses).AfterRelock);
    }

    [Fact]
    public void A_doubt_names_the_trials_the_function_and_how_it_would_come_back() => Assert.Equal(
        "unlock says that payment is lost (comes back: on service), yet relock does not list it as lost: check whether it works.",
        Assert.Single(Costs([Losing(Unlock, Recovery.OnService), Relock]).Doubts).Text);

    [Fact]
    public void Two_trials_that_disagree_on_how_it_comes_back_are_named()
    {
        var finding = Assert.Single(Costs([Losing(Unlock, Recovery.OnReset), Losing(Relock, Recovery.Never)]).Contradictions);
        Assert.Equal("recoveries-disagree", finding.Code);
        Assert.Equal("unlock says that payment is lost (comes back: on reset), relock says it too (comes back: never).", finding.Text);
    }

    [Fact]
    public void What_one_control_shows_at_work_and_another_lost_is_disputed()
    {
        var costs = Costs([Losing(Unlock, Recovery.OnRelock)],
            Control(LockState.Relocked, SwapResult.Works), Control(LockState.Relocked, SwapResult.Refused) with { Id = "control-2" });
        Assert.Equal(AfterRelock.Disputed, Assert.Single(costs.Trials[0].Losses).AfterRelock);
    }

    [Fact]
    public void Relocking_another_unit_says_nothing() =>
        Assert.Empty(Costs([Losing(Unlock, Recovery.Never), Relock with { Unit = "b" }]).Doubts);

    [Fact]
    public void A_reset_is_named_where_it_counts() => Assert.Equal(
        "unlock says that payment is lost (comes back: on reset), yet control shows it lost when relocked, after a reset.",
        Assert.Single(Costs([Losing(Unlock, Recovery.OnReset)], Control(LockState.Relocked, SwapResult.Refused) with { Procedure = SwapProcedure.Reset }).Contradictions).Text);

    [Theory]
    [InlineData(LockOutcome.Failed)]
    [InlineData(LockOutcome.RefusedByMaker)]
    public void A_trial_that_reached_no_state_is_not_checked_and_checks_nothing(LockOutcome outcome)
    {
        var control = Control(LockState.Relocked, SwapResult.Works);
        Assert.Empty(Costs([Losing(Unlock with { Outcome = outcome }, Recovery.Never)], control).Contradictions);
        Assert.Empty(Costs([Losing(Unlock, Recovery.OnRelock), Losing(Relock with { Outcome = outcome }, Recovery.Never)]).Contradictions);
    }

    [Fact]
    public void Trials_of_another_unit_say_nothing() =>
        Assert.Empty(Costs([Losing(Unlock, Recovery.OnRelock), Losing(Relock with { Unit = "b" }, Recovery.Never)]).Contradictions);

    [Fact]
    public void Without_lock_trials_there_are_no_costs() => Assert.Empty(Costs([]).Trials);

    static LockTrial Losing(LockTrial trial, OneOf<Recovery> recovers) => trial with { Losses = [new() { Function = "payment", Recovers = recovers }] };

    static SwapTrial Control(LockState state, SwapResult result) => Swap("control", "", Check("payment", result)) with { LockState = state };

    static LockCosts Costs(LockTrial[] locks, params SwapTrial[] swaps) =>
        new RecordCase(Phone(swaps) with { Locks = EntryList.Of(System.Collections.Immutable.ImmutableArray.Create(locks)) }).Derive<LockCosts>();
}
