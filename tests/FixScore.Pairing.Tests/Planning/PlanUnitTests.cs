using FixScore.Records;
using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests.Planning;

/// <summary>In which context a plan is made, on which unit, with parts of which, and what can be moved.</summary>
public sealed class PlanUnitTests
{
    static readonly SwapContext Nothing = new(null, null, null);

    [Fact]
    public void Without_trials_the_context_is_that_of_a_unit_as_delivered()
    {
        Assert.Equal(new SwapContext(LockState.Locked, null, SwapProcedure.None), PlanContexts.Usual(Phone()));
        Assert.Equal(new SwapContext(LockState.Locked, "7", SwapProcedure.None), PlanContexts.Usual(Units(new AssessedUnit { Id = "a", Software = "7" }, new AssessedUnit { Id = "b", Software = "8" })));
        Assert.Equal(new SwapContext(LockState.Locked, "9", SwapProcedure.Calibration), PlanContexts.Usual(Units(new AssessedUnit { Id = "a", Software = "7" }), software: "9", procedure: SwapProcedure.Calibration));
        Assert.Equal(new SwapContext(LockState.Locked, null, SwapProcedure.None), PlanContexts.Usual(Units()));
    }

    [Fact]
    public void The_host_is_the_device_with_most_trials_in_the_context()
    {
        var other = Nothing with { Software = "2" };
        var record = Phone(Swap("t1", "") with { Host = "b" }, Swap("t2", "") with { Software = "2" }, Swap("t3", "") with { Software = "2" });
        Assert.Equal(("b", "a"), Ids(record, Nothing));
        Assert.Equal(("a", "b"), Ids(record, other));
    }

    [Theory]
    [InlineData("x", "x", "b")]
    [InlineData("x", null, "b")]
    [InlineData(null, "y", "b")]
    [InlineData("x", "y", "c")]
    public void The_donor_is_another_device_of_the_model_code_as_far_as_known(string? host, string? second, string donor) => Assert.Equal(
        ("a", donor), Ids(Units(new AssessedUnit { Id = "a", ModelCode = host }, new AssessedUnit { Id = "b", ModelCode = second }, new AssessedUnit { Id = "c", ModelCode = host }), Nothing));

    [Fact]
    public void A_loose_spare_is_neither() => Assert.Equal(
        ("b", null), Ids(Units(new AssessedUnit { Id = "a", Source = UnitSource.MakerSpare }, new AssessedUnit { Id = "b", Source = UnitSource.Device }), Nothing));

    [Fact]
    public void One_part_of_a_group_that_cannot_be_reached_keeps_the_group()
    {
        var plan = Plan(Device([Board, Part("display"), Part("battery") with { Reach = Reach.NotPossible }, Part("camera")], [Integral("display", "battery")], []));
        Assert.Equal(("camera", "display"), (plan.Candidates.Select(unit => unit.Id).Joined(), plan.NotMovable.Select(unit => unit.Id).Joined()));
    }

    [Fact]
    public void A_part_that_only_damage_frees_is_not_moved()
    {
        var record = Device([Board, Part("display"), Part("camera")], [new() { Id = "glue", Joins = ["display", "board"], Kind = JointKind.Adhesive }], []) with
        {
            Operations = EntryList.Of<Operation>(new Operation { Id = "tear", Action = OperationAction.Pry, Tools = EntryList.Of<string>(), Undoes = ["glue"], Damages = ["board"] }),
        };
        Assert.Equal(("camera", "display"), (Plan(record).Candidates.Select(unit => unit.Id).Joined(), Plan(record).NotMovable.Select(unit => unit.Id).Joined()));
    }

    [Fact]
    public void A_flag_that_may_be_the_doing_of_a_part_that_cannot_be_moved_blames_nobody()
    {
        var record = Phone(Swap("t1", "display=b camera=b", Warns()));
        var stuck = record with { Parts = [.. record.Parts.Select(part => part.Id == "camera" ? part with { Reach = Reach.NotPossible } : part)] };
        Assert.Equal("display camera", Assert.Single(Plan(record).Plan!.Start.Suspects).Joined());
        Assert.Empty(Plan(stuck).Plan!.Start.Suspects);
    }

    [Theory]
    [InlineData(LockState.Locked, LockState.Unlocked, true, false)]
    [InlineData(LockState.Unlocked, LockState.Unlocked, false, false)]
    [InlineData(LockState.Relocked, LockState.Unlocked, true, false)]
    [InlineData(LockState.Unlocked, LockState.Relocked, false, true)]
    [InlineData(LockState.Locked, LockState.Locked, false, false)]
    public void A_lock_is_opened_or_closed_again(LockState from, LockState to, bool opens, bool closes)
    {
        var cost = new LockCost(new() { Id = "l", Unit = "a", From = from, To = to, Losses = [] }, []);
        Assert.Equal((opens, closes), (cost.Opens, cost.Closes));
    }

    [Fact]
    public void A_minute_has_sixty_seconds()
    {
        Assert.Equal(2.5m, new PlanCost(1, 1, 150).Minutes);
        Assert.Null(new PlanCost(1, 1, null).Minutes);
    }

    static TeardownRecord Units(params AssessedUnit[] units) => Phone() is var record ? record with { Assessment = record.Assessment with { Units = [.. units] } } : record;

    static (string?, string?) Ids(TeardownRecord record, SwapContext context)
    {
        var plan = TrialPlan.Of(new RecordCase(record), new PlanQuery(context));
        return (plan.Host?.Id, plan.Donor?.Id);
    }

    static TrialPlan Plan(TeardownRecord record) => TrialPlan.Of(new RecordCase(record), new PlanQuery());
}
