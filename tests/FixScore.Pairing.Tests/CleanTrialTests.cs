using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests;

public sealed class CleanTrialTests
{
    [Fact]
    public void A_trial_whose_checks_all_work_clears_all_its_foreign_parts()
    {
        var context = Infer(Swap("t", "display=b battery=c", Works("touch"), Works("gauge", "battery")));
        Assert.Equal(Verdict.Cleared, context.VerdictOn("display"));
        Assert.Equal(Verdict.Cleared, context.VerdictOn("battery"));
        Assert.Equal("t", context.Of("display")!.Because.Joined());
    }

    [Fact]
    public void A_trial_with_a_flag_clears_nothing()
    {
        var context = Infer(Swap("t", "display=b battery=b", Works("gauge", "battery"), Warns("touch", "display")));
        Assert.Equal(Verdict.Suspect, context.VerdictOn("battery"));
    }

    [Fact]
    public void A_trial_in_which_nothing_was_tested_clears_nothing()
    {
        Assert.Equal(Verdict.Suspect, Infer(Swap("t", "display=b", Untested("touch", "battery"))).VerdictOn("display"));
        Assert.Equal(Verdict.Suspect, Infer(Swap("t", "display=b")).VerdictOn("display"));
    }

    [Fact]
    public void Parts_that_an_untested_check_implicates_are_not_cleared()
    {
        var context = Infer(Swap("t", "display=b battery=b", Works("touch"), Untested("gauge", "battery")));
        Assert.Equal(Verdict.Cleared, context.VerdictOn("display"));
        Assert.Equal(Verdict.Suspect, context.VerdictOn("battery"));
    }

    [Fact]
    public void An_untested_check_that_names_no_parts_implicates_all()
    {
        var context = Infer(Swap("t", "display=b battery=b", Works("touch"), Untested("gauge")));
        Assert.Equal(Verdict.Suspect, context.VerdictOn("display"));
        Assert.Equal(Verdict.Suspect, context.VerdictOn("battery"));
    }

    [Fact]
    public void One_set_of_tied_parts_explains_the_trials_of_all_references()
    {
        var context = Infer(
            Swap("t1", "display=b battery=b", Warns()),
            Swap("t2", "display=a", Works()) with { Host = "b" });
        Assert.Equal(Verdict.Cleared, context.VerdictOn("display"));
        Assert.Equal(Verdict.Paired, context.VerdictOn("battery"));
        Assert.Equal("t1 t2", context.Of("battery")!.Because.Joined());
    }
}
