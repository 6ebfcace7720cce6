using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests;

public sealed class GroupTests
{
    static ContextVerdicts Bonded(params Records.SwapTrial[] swaps) => Assert.Single(
        Infer(Device([Board, Part("display"), Part("touch"), Part("battery")], [Integral("display", "touch")], swaps)).Contexts);

    [Fact]
    public void Naming_one_part_of_a_group_names_all()
    {
        var context = Bonded(Swap("t", "touch=b", Works()));
        Assert.Equal(Verdict.Cleared, context.VerdictOn("display"));
        Assert.Equal(Verdict.Cleared, context.Of("display")!.OfGroup.Verdict);
    }

    [Fact]
    public void Parts_of_a_flagged_group_are_suspects_and_the_group_is_tied()
    {
        var display = Bonded(Swap("t", "display=b", Warns())).Of("display")!;
        Assert.Equal(Verdict.Suspect, display.Verdict);
        Assert.Equal(Verdict.Paired, display.OfGroup.Verdict);
        Assert.Equal("t", display.OfGroup.Because.Joined());
    }

    [Fact]
    public void A_flag_that_implicates_one_part_of_a_group_ties_that_part()
    {
        var context = Bonded(Swap("t", "display=b", Warns("digitiser", "touch")));
        Assert.Equal(Verdict.Paired, context.VerdictOn("touch"));
        Assert.Equal(Verdict.Suspect, context.VerdictOn("display"));
        Assert.Equal(Verdict.Paired, context.Of("display")!.OfGroup.Verdict);
    }

    [Fact]
    public void A_group_is_cleared_only_when_all_its_parts_are()
    {
        var context = Bonded(Swap("t", "display=b", Works("picture"), Untested("digitiser", "touch")));
        Assert.Equal(Verdict.Cleared, context.VerdictOn("display"));
        Assert.Equal(Verdict.Suspect, context.Of("display")!.OfGroup.Verdict);
    }

    [Fact]
    public void A_part_in_no_group_has_one_conclusion()
    {
        var battery = Bonded(Swap("t", "battery=b", Warns())).Of("battery")!;
        Assert.Same(battery.OfPart, battery.OfGroup);
    }
}
