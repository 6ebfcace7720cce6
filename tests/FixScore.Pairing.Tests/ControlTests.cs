using FixScore.Records;
using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests;

public sealed class ControlTests
{
    static readonly SwapTrial Control = Swap("control", "", Warns("touch"));

    [Fact]
    public void A_trial_without_a_foreign_part_is_a_control_and_ties_nothing()
    {
        var context = Infer(Control);
        Assert.True(context.IsConsistent);
        Assert.All(context.Parts, verdict => Assert.Equal(Verdict.Untested, verdict.Verdict));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_a_control_flags_is_a_fault_of_its_host_wherever_the_control_stands(bool first)
    {
        var swap = Swap("t", "display=b battery=b", Works("gauge"), Warns("touch", "display"));
        var context = first ? Infer(Control, swap) : Infer(swap, Control);
        Assert.Equal(Verdict.Suspect, context.VerdictOn("display"));
        Assert.Equal(Verdict.Cleared, context.VerdictOn("battery"));
    }

    [Fact]
    public void What_is_proven_by_setting_a_flag_aside_is_proven_by_the_control_too()
    {
        var context = Infer(Swap("t", "display=b battery=b", Works("gauge"), Warns("touch", "display")), Control);
        Assert.Equal("t control", context.Of("battery")!.Because.Joined());
    }

    [Fact]
    public void A_fault_of_one_host_excuses_no_other()
    {
        var context = Infer(Control with { Host = "b" }, Swap("t", "display=b", Warns("touch")));
        Assert.Equal(Verdict.Paired, context.VerdictOn("display"));
    }

    [Fact]
    public void A_fault_of_one_function_excuses_no_other()
    {
        var context = Infer(Control, Swap("t", "display=b", Warns("colour")));
        Assert.Equal(Verdict.Paired, context.VerdictOn("display"));
    }

    [Fact]
    public void A_control_of_another_context_excuses_nothing()
    {
        var verdicts = Infer(Phone(Control with { LockState = LockState.Unlocked }, Swap("t", "display=b", Warns("touch"))));
        Assert.Equal(Verdict.Paired, verdicts.Contexts[1].VerdictOn("display"));
    }

    [Fact]
    public void A_function_that_works_in_spite_of_the_hosts_fault_still_works()
    {
        var context = Infer(Control, Swap("t", "display=b", Works("touch")));
        Assert.Equal(Verdict.Cleared, context.VerdictOn("display"));
    }

    [Fact]
    public void A_trial_that_swaps_only_inert_parts_is_a_control()
    {
        var record = Device(
            [Board, Part("frame") with { Inert = true }, Part("display")], [],
            [Swap("t1", "frame=b", Warns("touch")), Swap("t2", "display=b", Warns("touch"))]);
        Assert.Equal(Verdict.Suspect, Assert.Single(Infer(record).Contexts).VerdictOn("display"));
    }

    [Fact]
    public void A_trial_that_swaps_all_but_inert_parts_is_a_control()
    {
        var context = Infer(Swap("t1", "board=b display=b battery=b camera=b", Warns("touch")), Swap("t2", "display=b", Warns("touch")));
        Assert.Equal(Verdict.Suspect, context.VerdictOn("display"));
    }
}
