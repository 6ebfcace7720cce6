using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

/// <summary>Routes as text, and which parts are meant.</summary>
public sealed class RouteTests
{
    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    public void A_part_is_told_as_a_list_of_operations_with_steps_proof_and_cautions(string culture)
    {
        var ran = Fixscore.RunOn(Torch.Record, "route", "-", "--part", "cell", "--culture", culture);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Approved.Matches($"route-cell{(culture.Length > 0 ? "-" + culture : "")}", ran.Out);
    }

    [Theory]
    [InlineData("switch")]
    [InlineData("panel")]
    [InlineData("board")]
    public void What_is_unknown_or_damaged_is_said(string part) => Approved.Matches($"route-{part}", Fixscore.RunOn(Torch.Record, "route", "-", "--part", part).Out);

    [Fact]
    public void All_parts_are_a_table_and_what_stands_in_the_way_of_the_others() => Approved.Matches("route-all", Fixscore.RunOn(Torch.Record, "route", "-").Out);

    [Fact]
    public void Classes_are_a_table_with_what_the_letters_say() => Approved.Matches("route-classes", Fixscore.RunOn(Torch.Record, "route", "-", "--classes").Out);

    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    public void A_tablet_fits_80_columns(string culture)
    {
        var ran = Fixscore.RunOn(Tablets.Slate2, "route", "-", "--classes", "--culture", culture);
        Approved.Matches($"route-tablet{(culture.Length > 0 ? "-" + culture : "")}", ran.Out);
        Assert.DoesNotContain(ran.Out.Split('\n'), line => line.Length > 80);
    }

    [Fact]
    public void Effort_that_is_too_small_leaves_the_best_found_with_what_no_route_can_be_below()
    {
        var one = Fixscore.RunOn(Tablets.Slate2, "route", "-", "--part", "battery", "--effort", "1");
        Assert.Equal(0, one.Code);
        Assert.Contains("Best found; no route takes fewer than ", one.Out, StringComparison.Ordinal);
        var all = Fixscore.RunOn(Tablets.Slate2, "route", "-", "--effort", "1").Out;
        Assert.Contains("Proven   Tools", all, StringComparison.Ordinal);
        Assert.Contains("  >= ", all, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cel", "There is no part or role 'cel' in brackwater-torch. Did you mean 'cell'?")]
    [InlineData("batery", "Did you mean 'battery'?")]
    [InlineData("hinge", "There is no part 'hinge': it was looked for and is not in this device.")]
    [InlineData("", "There is no part or role ''")]
    public void A_wrong_part_is_a_usage_error_that_says_what_was_probably_meant(string part, string says)
    {
        var ran = Fixscore.RunOn(Torch.Record, "route", "-", "--part", part);
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_without_the_part_says_so_beside_one_that_has_it()
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.Run("route", folder.Write("a.json", Tablets.Slate2), folder.Write("b.json", Torch.Record), "--part", "cell");
        Assert.Equal(0, ran.Code);
        Assert.Contains("Larkfield Slate 2 (larkfield-slate-2)\nThere is no such part in this record.\n", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_that_cannot_be_used_ends_it_with_3()
    {
        var ran = Fixscore.RunOn("{}"u8.ToArray(), "route", "-");
        Assert.Equal((3, ""), (ran.Code, ran.Out));
    }
}
