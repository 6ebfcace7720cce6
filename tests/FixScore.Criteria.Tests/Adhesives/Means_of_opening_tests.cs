using FixScore.Criteria.Adhesives;

namespace FixScore.Criteria.Tests.Adhesives;

public sealed class Means_of_opening_tests
{
    static readonly AdhesiveStrengthCriterion Criterion = new();
    static readonly Operation ByHand = Bonded.Out() with { Action = OperationAction.Pull };

    [Fact]
    public void A_bond_that_a_tool_opens_has_the_points_of_a_tool() => Scores(70, Bonded.Out("card"));

    [Fact]
    public void A_bond_that_heat_opens_has_the_points_of_its_temperature()
    {
        Scores(60, Bonded.Out("plate-60"));
        Scores(25, Bonded.Out("plate-100"));
    }

    [Fact]
    public void Tools_in_use_together_count_by_the_hottest_and_harshest()
    {
        Scores(25, Bonded.Out("plate-60", "plate-100"));
        Scores(40, Bonded.Out("plate-60", "dropper"));
    }

    [Fact]
    public void Heat_of_unknown_temperature_spans_level_and_bands()
    {
        Scores(new(0, 60), Bonded.Out("card") with { DirectlyAfter = "warm" }, Bonded.Warm());
        Scores(new(0, 60), Bonded.Out("oven"));
    }

    [Fact]
    public void Solvent_counts_by_tool_and_by_action()
    {
        Scores(40, Bonded.Out("dropper"));
        Scores(40, Bonded.Out("card") with { Action = OperationAction.ApplySolvent });
    }

    [Fact]
    public void What_is_opened_directly_after_heat_is_opened_by_heat() =>
        Scores(25, ByHand with { DirectlyAfter = "lift" },
            new Operation { Id = "lift", Action = OperationAction.Lift, Tools = [], DirectlyAfter = "warm" }, Bonded.Warm("plate-100"));

    [Fact]
    public void Heat_named_in_after_counts_and_a_choice_without_heat_does_not()
    {
        var lift = new Operation { Id = "lift", Action = OperationAction.Lift, Tools = [] };
        Condition warm = new Condition.Done("warm"), cold = new Condition.Done("lift");
        Scores(25, Bonded.Out("card") with { After = [new Condition.AllOf([cold, warm])] }, lift, Bonded.Warm("plate-100"));
        Scores(70, Bonded.Out("card") with { After = [new Condition.AnyOf([cold, warm])] }, lift, Bonded.Warm("plate-100"));
    }

    [Fact]
    public void A_bond_that_only_damage_opens_scores_nothing() => Scores(0, Bonded.Out() with { Damages = ["frame"] });

    [Fact]
    public void The_gentlest_operation_and_set_of_tools_counts()
    {
        Scores(70, Bonded.Out("plate-100"), Bonded.Out("card") with { Id = "out-2" });
        Scores(70, Bonded.Out("plate-100") with { OrTools = [["card"]] });
        Scores(100, Bonded.Out("plate-100") with { OrTools = [[]] });
    }

    [Fact]
    public void Putting_together_opens_nothing() =>
        Scores(70, Bonded.Out("card"), Bonded.Out() with { Id = "back", Phase = OperationPhase.Reassembly });

    [Fact]
    public void A_stretch_release_strip_pulled_by_hand_has_a_level_of_its_own()
    {
        Assert.Equal(90, Of(AdhesiveType.StretchRelease));
        Assert.Equal(100, Of(AdhesiveType.Foam));
        Assert.Equal(new Interval(90, 100), Of(default));

        static Interval Of(OneOf<AdhesiveType> type) => Criterion.On(
            Bonded.With(Bonded.Glue with { Adhesive = new() { Type = type } }, ByHand), "battery", Bonded.Firm).Score;
    }

    [Fact]
    public void Unknown_tools_may_be_any_recorded_tool() => Scores(new(0, 100), Bonded.Out() with { Tools = default });

    [Fact]
    public void Unknown_tools_without_a_hot_one_on_record_are_hands_or_a_tool()
    {
        var record = Bonded.By(Bonded.Out() with { Tools = default }) with { Tools = [Bonded.Tools[0]] };
        var outcome = Criterion.On(record, "battery", Bonded.Firm);
        Assert.Equal(new Interval(70, 100), outcome.Score);
        Assert.Contains(new Missing(new("/operations/0"), "tools"), outcome.Missing);
    }

    [Fact]
    public void A_profile_sets_levels_in_its_own_points() =>
        Assert.Equal(33, Criterion.On(Bonded.By(Bonded.Out("card")), "battery", Bonded.Firm, (AdhesiveStrengthOptions.Means, Levels.Of(("tool", 33m)))).Score);

    static void Scores(Interval expected, params ReadOnlySpan<Operation> operations)
    {
        var record = Bonded.By(operations);
        var outcome = Criterion.On(record, "battery", Bonded.Firm);
        Assert.Equal(expected, outcome.Score);
        outcome.PointsInto(record);
    }
}
