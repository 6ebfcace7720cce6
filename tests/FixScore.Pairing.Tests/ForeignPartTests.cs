using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests;

public sealed class ForeignPartTests
{
    [Fact]
    public void A_part_of_another_unit_than_the_main_board_is_foreign()
    {
        var context = Infer(Swap("t", "display=b", Works()));
        Assert.Equal(Verdict.Cleared, context.VerdictOn("display"));
        Assert.Equal(Verdict.Untested, context.VerdictOn("battery"));
    }

    [Fact]
    public void With_the_main_board_of_another_unit_all_parts_left_in_the_host_are_foreign()
    {
        var context = Infer(Swap("t", "board=b display=b", Works()));
        Assert.Equal(Verdict.Untested, context.VerdictOn("display"));
        Assert.Equal(Verdict.Cleared, context.VerdictOn("battery"));
        Assert.Equal(Verdict.Cleared, context.VerdictOn("camera"));
    }

    [Fact]
    public void A_part_of_a_third_unit_is_foreign_to_a_main_board_of_the_second()
    {
        var context = Infer(Swap("t", "board=b display=c battery=b camera=b", Works()));
        Assert.Equal(Verdict.Cleared, context.VerdictOn("display"));
        Assert.Equal(Verdict.Untested, context.VerdictOn("camera"));
    }

    [Fact]
    public void The_main_board_follows_when_another_part_of_its_group_is_named()
    {
        var record = Device([Board, Part("port"), Part("display")], [Integral("board", "port")], [Swap("t", "port=b", Works())]);
        var context = Assert.Single(Infer(record).Contexts);
        Assert.Equal(Verdict.Cleared, context.VerdictOn("display"));
    }

    [Fact]
    public void Parts_of_the_main_boards_group_get_no_verdict()
    {
        var record = Device([Board, Part("port"), Part("display")], [Integral("board", "port")], [Swap("t", "display=b", Works())]);
        var context = Assert.Single(Infer(record).Contexts);
        Assert.Equal(["display"], context.Parts.Select(verdict => verdict.Part.Id));
        Assert.Null(context.Of("port"));
    }

    [Fact]
    public void Without_a_main_board_the_host_is_the_reference()
    {
        var record = Device([Part("display"), Part("battery")], [], [Swap("t", "display=b", Works())]);
        var context = Assert.Single(Infer(record).Contexts);
        Assert.Equal(Verdict.Cleared, context.VerdictOn("display"));
        Assert.Equal(Verdict.Untested, context.VerdictOn("battery"));
    }

    [Fact]
    public void An_inert_part_is_never_foreign()
    {
        var record = Device([Board, Part("frame") with { Inert = true }, Part("display")], [], [Swap("t", "frame=b display=b", Warns())]);
        var context = Assert.Single(Infer(record).Contexts);
        Assert.Equal(Verdict.Untested, context.VerdictOn("frame"));
        Assert.Equal(Verdict.Paired, context.VerdictOn("display"));
    }

    [Fact]
    public void What_rides_on_a_named_part_stays_in_the_host_unless_named()
    {
        var record = Device([Board, Part("display"), Part("camera") with { On = "display" }], [], [Swap("t", "display=b", Warns())]);
        var context = Assert.Single(Infer(record).Contexts);
        Assert.Equal(Verdict.Paired, context.VerdictOn("display"));
        Assert.Equal(Verdict.Untested, context.VerdictOn("camera"));
    }

    [Fact]
    public void Units_of_different_model_codes_count_like_any_other()
    {
        var record = Phone(Swap("t", "display=b", Warns()));
        record = record with { Assessment = record.Assessment with { Units = [new() { Id = "a", ModelCode = "x1" }, new() { Id = "b", ModelCode = "x2" }] } };
        Assert.Equal(Verdict.Paired, Assert.Single(Infer(record).Contexts).VerdictOn("display"));
    }
}
