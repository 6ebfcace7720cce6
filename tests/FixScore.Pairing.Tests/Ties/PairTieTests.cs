using FixScore.Pairing.Ties;
using FixScore.Records;
using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests.Ties;

public sealed class PairTieTests
{
    static ContextTies Ties(params SwapTrial[] swaps) => Assert.Single(new RecordCase(Phone(swaps)).Derive<PairTies>().Contexts);

    static Verdict On(ContextTies context, string part, string? with = null) => context.Of(part, with)!.Verdict;

    [Fact]
    public void One_flagged_swap_may_be_a_tie_to_the_board_or_to_any_part_left_behind()
    {
        var context = Ties(Swap("t", "display=b", Warns()));
        Assert.Equal(Verdict.Suspect, On(context, "display"));
        Assert.Equal(Verdict.Suspect, On(context, "display", "battery"));
        Assert.Equal(Verdict.Untested, On(context, "battery", "camera"));
        Assert.Equal(
            ["display + main board, display + battery, display + camera"],
            context.NotToldApart.Select(set => string.Join(", ", set)));
    }

    [Fact]
    public void Two_parts_that_only_work_apart_from_each_other_badly_are_tied()
    {
        var context = Ties(
            Swap("t1", "display=b", Warns()), Swap("t2", "battery=b", Warns()), Swap("t3", "display=b battery=b", Works()));
        Assert.Equal(Verdict.Paired, On(context, "display", "battery"));
        Assert.Equal(Verdict.Paired, On(context, "battery", "display"));
        Assert.Equal(Verdict.Cleared, On(context, "display"));
        Assert.Equal("t1 t3", context.Of("display", "battery")!.Because.Joined());
    }

    [Fact]
    public void Another_main_board_breaks_no_tie_between_parts()
    {
        var context = Ties(Swap("t1", "board=b", Works()), Swap("t2", "display=b", Warns()), Swap("t3", "camera=b", Works()));
        Assert.Equal(Verdict.Cleared, On(context, "display"));
        Assert.Equal(Verdict.Cleared, On(context, "display", "camera"));
        Assert.Equal(Verdict.Paired, On(context, "display", "battery"));
    }

    [Fact]
    public void Clean_swaps_of_all_others_leave_the_tie_to_the_board()
    {
        var context = Ties(Swap("t1", "display=b", Warns()), Swap("t2", "battery=b", Works()), Swap("t3", "camera=b", Works()));
        Assert.Equal(Verdict.Paired, On(context, "display"));
        Assert.Equal("t1 t2 t3", context.Of("display")!.Because.Joined());
        Assert.Empty(context.NotToldApart);
        Assert.Empty(context.Findings);
    }

    [Fact]
    public void Parts_from_two_other_units_are_apart_from_each_other_and_from_the_board()
    {
        var context = Ties(Swap("t", "display=b battery=c", Works()));
        Assert.Equal(Verdict.Cleared, On(context, "display", "battery"));
        Assert.Equal(Verdict.Cleared, On(context, "display"));
    }

    [Fact]
    public void A_check_blames_a_tie_by_either_end()
    {
        var context = Ties(Swap("t", "display=b", Works("picture", "display"), Warns("camera", "camera")));
        Assert.Equal(Verdict.Paired, On(context, "display", "camera"));
        Assert.Equal(Verdict.Suspect, On(context, "display", "battery"));
        Assert.Equal(TieFindingKind.OnlyPartsExplain, Assert.Single(context.Findings).Kind);
    }

    [Fact]
    public void An_untested_check_spares_the_ties_that_touch_what_it_implicates()
    {
        var context = Ties(Swap("t", "display=b", Works("picture"), Untested("camera", "camera")));
        Assert.Equal(Verdict.Suspect, On(context, "display", "camera"));
        Assert.Equal(Verdict.Cleared, On(context, "display", "battery"));
        Assert.Equal(Verdict.Cleared, On(context, "display"));
    }

    [Fact]
    public void Ties_between_two_groups_are_proven_together()
    {
        var record = Device(
            [Board, Part("display"), Part("touch"), Part("reader")],
            [Integral("display", "touch")],
            [Swap("t1", "display=b", Warns()), Swap("t2", "board=b", Works())]);
        var context = Assert.Single(new RecordCase(record).Derive<PairTies>().Contexts);
        Assert.Null(context.Of("display", "touch"));
        Assert.Equal(Verdict.Suspect, On(context, "display", "reader"));
        Assert.Equal(Verdict.Paired, context.Of("display", "reader")!.OfGroups.Verdict);
        Assert.Equal(Verdict.Paired, context.Of("reader", "touch")!.OfGroups.Verdict);
    }

    [Fact]
    public void Contradictions_are_of_trials_that_no_tie_explains()
    {
        var context = Ties(Swap("t1", "display=b", Warns()), Swap("t2", "display=c", Works()));
        Assert.False(context.IsConsistent);
        Assert.Equal("t1 t2", Assert.Single(context.Contradictions).Joined());
        Assert.Empty(context.NotToldApart);
    }
}
