using FixScore.Records;
using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests.Planning;

/// <summary>Plans for records.</summary>
public sealed class TrialPlanTests
{
    [Fact]
    public void Without_trials_every_part_that_can_carry_a_code_is_open()
    {
        var plan = Plan(Phone());
        Assert.Equal("display battery camera", plan.Candidates.Select(unit => unit.Id).Joined());
        Assert.Equal(("a", "b", false), (plan.Host?.Id, plan.Donor?.Id, plan.HasControl));
        Assert.Equal((null, 3m), (plan.Obstacle, plan.Plan!.OneAtATime.Trials));
    }

    [Fact]
    public void What_is_proven_is_no_candidate_and_a_flag_leaves_suspects()
    {
        var plan = Plan(Phone(Swap("t1", "camera=b", Works()), Swap("t2", "display=b battery=b camera=b", Warns("touch"))));
        Assert.Equal(("display battery", "camera", "all touch charging battery-health"), (plan.Candidates.Select(unit => unit.Id).Joined(), plan.Cleared.Joined(), plan.Functions.Joined()));
        Assert.Equal("display battery", Assert.Single(plan.Plan!.Start.Suspects).Joined());
    }

    [Fact]
    public void Suspects_of_which_one_is_proven_tied_blame_nobody_else()
    {
        var plan = Plan(Phone(Swap("t1", "display=b", Warns()), Swap("t2", "display=b battery=b", Warns())));
        Assert.Equal(("battery camera", "display"), (plan.Candidates.Select(unit => unit.Id).Joined(), plan.Tied.Joined()));
        Assert.Empty(plan.Plan!.Start.Suspects);
    }

    [Fact]
    public void A_group_is_one_candidate_with_the_joint_probability()
    {
        var record = Device([Board, Part("display"), Part("battery")], [Integral("display", "battery")], []);
        var unit = Assert.Single(Plan(record, priors: TiePriors.BuiltIn.With("display", 0.5m).With("battery", 0.2m)).Candidates);
        Assert.Equal(("display", 2, 0.6m), (unit.Id, unit.Parts.Length, unit.Probability));
    }

    [Fact]
    public void A_part_that_cannot_be_reached_is_told_and_not_tried()
    {
        var plan = Plan(Device([Board, Part("display"), Part("camera") with { Reach = Reach.NotPossible }], [], []));
        Assert.Equal(("display", "camera"), (plan.Candidates.Select(unit => unit.Id).Joined(), plan.NotMovable.Select(unit => unit.Id).Joined()));
    }

    [Fact]
    public void Contradicting_trials_are_an_obstacle() =>
        Assert.Equal(PlanObstacle.Contradiction, Plan(Phone(Swap("t1", "display=b", Warns()), Swap("t2", "display=b", Works()))).Obstacle);

    [Fact]
    public void Two_proven_suspicions_are_more_than_one_tied_part() => Assert.Equal(PlanObstacle.Impossible,
        Plan(Device([Board, Part("p0"), Part("p1"), Part("p2"), Part("p3")], [], [Swap("t1", "p0=b p1=b", Warns()), Swap("t2", "p2=b p3=b", Warns())]), atMost: 1).Obstacle);

    [Fact]
    public void Units_of_another_model_code_give_no_parts()
    {
        var record = Phone();
        var units = EntryList.Of<AssessedUnit>(new() { Id = "a", ModelCode = "x" }, new() { Id = "b", ModelCode = "y" });
        Assert.Equal(PlanObstacle.OneDevice, Plan(record with { Assessment = record.Assessment with { Units = units } }).Obstacle);
    }

    // By hand: both units are opened (2 x 30 s) and closed (2 x 20 s).
    [Fact]
    public void Minutes_count_both_units_opened_and_closed()
    {
        var record = Device([Board, Part("display")], [new() { Id = "screws", Joins = ["display", "board"], Kind = JointKind.Screw }], []) with
        {
            Operations = EntryList.Of<Operation>(new Operation
            {
                Id = "open", Action = OperationAction.Unscrew, Tools = EntryList.Of<string>(), Undoes = ["screws"], Removes = ["display"], Seconds = 30, ReassemblySeconds = 20,
            }),
        };
        var plan = Plan(record);
        Assert.Equal((100m, false), (plan.Plan!.Cost.Seconds, plan.AssumesReassembly));
    }

    [Fact]
    public void The_context_with_most_trials_is_the_usual_one()
    {
        var record = Phone(Swap("t1", "") with { Software = "1" }, Swap("t2", "") with { Software = "2" }, Swap("t3", "") with { Software = "2" });
        Assert.Equal(new SwapContext(null, "2", null), PlanContexts.Usual(record));
        Assert.Equal(new SwapContext(null, "1", null), PlanContexts.Usual(record, software: "1"));
        Assert.Equal(new SwapContext(LockState.Unlocked, null, SwapProcedure.None), PlanContexts.Usual(record, LockState.Unlocked));
    }

    [Fact]
    public void A_control_is_a_trial_with_nothing_installed_on_the_host_in_the_context()
    {
        Assert.True(Plan(Phone(Swap("control", "", Works()))).HasControl);
        Assert.False(Plan(Phone(Swap("t1", "camera=b", Works()))).HasControl);
        Assert.False(Plan(Phone(Swap("t1", "camera=b", Works()), Swap("t2", "display=b", Works()), Swap("control", "", Works()) with { Software = "2" })).HasControl);
    }

    [Fact]
    public void The_context_asked_for_is_taken()
    {
        var asked = new SwapContext(LockState.Unlocked, "9", null);
        Assert.Equal(asked, TrialPlan.Of(new RecordCase(Phone(Swap("t1", "camera=b", Works()))), new PlanQuery(asked)).Context);
    }

    [Theory]
    [InlineData(64, null)]
    [InlineData(65, PlanObstacle.TooMany)]
    public void More_than_64_candidates_are_too_many(int parts, PlanObstacle? obstacle) => Assert.Equal(obstacle,
        Plan(Device([Board, .. Enumerable.Range(0, parts).Select(i => Part($"p{i:00}"))], [], []), atMost: 1).Obstacle);

    // By hand: what rides on the board is freed before it, what rides on the display comes along with it.
    [Fact]
    public void What_rides_on_the_parts_that_are_swapped_is_freed_first_or_moved_along()
    {
        static Operation Take(string id, string joint, string part, int seconds) => new()
        {
            Id = id, Action = OperationAction.Unscrew, Tools = EntryList.Of<string>(), Undoes = [joint], Removes = [part], Seconds = seconds, ReassemblySeconds = seconds,
        };
        var record = Device(
            [Board, Part("display"), Part("camera") with { On = "display" }],
            [new() { Id = "screws", Joins = ["display", "board"], Kind = JointKind.Screw }, new() { Id = "clip", Joins = ["camera", "display"], Kind = JointKind.SnapFit }], []) with
        {
            Operations = EntryList.Of(Take("open", "screws", "display", 30), Take("unclip", "clip", "camera", 5)),
        };
        var plan = Plan(record, atMost: 1);
        Assert.Equal("display camera", plan.Candidates.Select(unit => unit.Id).Joined());
        Assert.False(plan.AssumesReassembly);
        Assert.NotNull(plan.Plan!.Cost.Seconds);
    }

    [Fact]
    public void A_way_back_that_was_not_timed_is_taken_as_long_as_the_way_in()
    {
        var record = Device([Board, Part("display")], [new() { Id = "screws", Joins = ["display", "board"], Kind = JointKind.Screw }], []) with
        {
            Operations = EntryList.Of<Operation>(new Operation
            {
                Id = "open", Action = OperationAction.Unscrew, Tools = EntryList.Of<string>(), Undoes = ["screws"], Removes = ["display"], Seconds = 30,
            }),
        };
        var plan = Plan(record);
        Assert.Equal((120m, true), (plan.Plan!.Cost.Seconds, plan.AssumesReassembly));
    }

    [Fact]
    public void The_built_in_guesses_say_that_they_are_invented() => Assert.StartsWith("Invented", TiePriors.BuiltIn.About, StringComparison.Ordinal);

    static TrialPlan Plan(TeardownRecord record, int? atMost = null, TiePriors? priors = null) =>
        TrialPlan.Of(new RecordCase(record), new PlanQuery(AtMost: atMost, Priors: priors));
}
