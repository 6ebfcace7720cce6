using FixScore.Records;
using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests;

public sealed class FlagTests
{
    [Theory]
    [InlineData(SwapResult.Notice)]
    [InlineData(SwapResult.Warning)]
    [InlineData(SwapResult.Degraded)]
    [InlineData(SwapResult.Refused)]
    public void Whatever_is_worse_than_works_ties_the_only_foreign_part(SwapResult result)
    {
        var display = Infer(Swap("t", "display=b", Check("touch", result))).Of("display")!;
        Assert.Equal(Verdict.Paired, display.Verdict);
        Assert.Equal(result, display.Worst);
        Assert.Equal("t", display.Because.Joined());
    }

    [Fact]
    public void A_flag_with_two_foreign_parts_leaves_both_suspect()
    {
        var context = Infer(Swap("t", "display=b battery=b", Warns()));
        Assert.Equal(Verdict.Suspect, context.VerdictOn("display"));
        Assert.Equal(Verdict.Suspect, context.VerdictOn("battery"));
        Assert.True(context.Of("display")!.Worst.IsUnknown);
    }

    [Fact]
    public void Only_implicated_parts_can_be_the_cause()
    {
        var context = Infer(Swap("t", "display=b battery=b", Warns("touch", "display", "camera")));
        Assert.Equal(Verdict.Paired, context.VerdictOn("display"));
    }

    [Fact]
    public void A_part_that_was_foreign_but_is_met_by_no_constraint_is_suspect()
    {
        var context = Infer(Swap("t", "display=b battery=b", Warns("touch", "display")));
        Assert.Equal(Verdict.Suspect, context.VerdictOn("battery"));
        Assert.Empty(context.Of("battery")!.Because);
    }

    [Fact]
    public void A_flag_ties_what_clean_trials_leave_of_its_parts()
    {
        var display = Infer(
            Swap("t1", "display=b battery=b camera=b", Warns()),
            Swap("t2", "battery=b", Works()),
            Swap("t3", "camera=b", Works()),
            Swap("t4", "battery=b camera=b", Works())).Of("display")!;
        Assert.Equal(Verdict.Paired, display.Verdict);
        Assert.Equal("t1 t4", display.Because.Joined());
    }

    [Fact]
    public void Every_flag_of_a_trial_is_a_constraint_of_its_own()
    {
        var context = Infer(Swap("t", "display=b battery=b", Warns("touch", "display"), Warns("gauge", "battery")));
        Assert.Equal(Verdict.Paired, context.VerdictOn("display"));
        Assert.Equal(Verdict.Paired, context.VerdictOn("battery"));
    }

    [Fact]
    public void The_worst_result_seen_where_a_part_is_proven_counts_and_its_trial_is_named()
    {
        var display = Infer(
            Swap("t1", "display=b", Check("touch", SwapResult.Notice)),
            Swap("t2", "display=b", Check("touch", SwapResult.Degraded)),
            Swap("t3", "display=b battery=b", Check("touch", SwapResult.Refused))).Of("display")!;
        Assert.Equal(SwapResult.Degraded, display.Worst);
        Assert.Equal("t2", display.Because.Joined());
        Assert.Equal(["t1", "t2"], display.OfPart.Flags.Select(flag => flag.Trial.Id));
    }

    [Fact]
    public void A_suspect_is_at_worst_what_may_be_its_doing()
    {
        var context = Infer(
            Swap("t1", "display=b battery=b camera=b", Check("touch", SwapResult.Notice), Check("gauge", SwapResult.Refused, "battery", "camera")),
            Swap("t2", "display=b camera=b", Warns("touch")));
        Assert.Equal(Verdict.Suspect, context.VerdictOn("display"));
        Assert.Equal(SwapResult.Warning, context.Of("display")!.OfPart.AtWorst);
        Assert.Equal("t1 t2", context.Of("display")!.Because.Joined());
    }

    [Fact]
    public void What_was_left_untested_may_be_the_worst_of_a_suspect()
    {
        var context = Infer(Swap("t", "display=b battery=b", Check("touch", SwapResult.Notice), Untested("colour", "display")));
        Assert.Equal(SwapResult.Refused, context.Of("display")!.OfPart.AtWorst);
        Assert.Equal(SwapResult.Notice, context.Of("battery")!.OfPart.AtWorst);
    }

    [Fact]
    public void A_list_of_results_is_a_flag_when_each_is_worse_than_works()
    {
        var display = Infer(
            Swap("t1", "display=b", Check("touch", new OneOf<SwapResult>(SwapResult.Refused, SwapResult.Notice))),
            Swap("t2", "display=b", Check("touch", SwapResult.Warning))).Of("display")!;
        Assert.Equal(Verdict.Paired, display.Verdict);
        Assert.Equal(new OneOf<SwapResult>(SwapResult.Warning, SwapResult.Refused), display.Worst);
    }

    [Theory]
    [InlineData(SwapResult.Works, SwapResult.Refused)]
    [InlineData(SwapResult.Untested, SwapResult.Refused)]
    [InlineData(SwapResult.Works, SwapResult.Untested)]
    public void A_list_of_results_with_works_or_untested_and_another_word_counts_as_untested(SwapResult first, SwapResult second)
    {
        var context = Infer(Swap("t", "display=b battery=b", Works("gauge"), Check("touch", new OneOf<SwapResult>(first, second), "display")));
        Assert.Equal(Verdict.Suspect, context.VerdictOn("display"));
        Assert.Equal(Verdict.Cleared, context.VerdictOn("battery"));
    }
}
