using FixScore.Criteria.Time;
using FixScore.Testing;

namespace FixScore.Criteria.Tests.Time;

/// <summary>
/// Own arithmetic, no source: which sequence of BasicMOST stands for which work is own judgement. Seat the driver and five
/// wrist turns 14, tool picked up and laid aside 4, part laid aside 4; 0.36 s for each.
/// </summary>
public sealed class Estimated_time_tests
{
    static readonly DisassemblyTimeCriterion Criterion = new();
    static readonly (Option, object) Estimated = (DisassemblyTimeOptions.Basis, Basis.Estimated);

    // 18 for the first, 14 for each of three more: 60.
    [Fact]
    public void Four_screws_with_one_tool_take_21_60_seconds() => Assert.Equal(21.60m, SecondsOf(Screwed(4)));

    [Fact]
    public void The_part_laid_aside_adds_to_it() => Assert.Equal(21.60m + 1.44m, SecondsOf(Screwed(4, removes: true)));

    [Fact]
    public void A_tool_still_in_hand_is_not_picked_up_again()
    {
        var same = SecondsOf(Twice("driver"));
        var other = SecondsOf(Twice("other"));
        Assert.Equal(1.44m, other - same);
    }

    [Fact]
    public void Bare_hands_put_no_tool_down() =>
        Assert.Equal(SecondsOf(Twice("driver")), SecondsOf(Twice("driver", between: true)));

    [Fact]
    public void An_unknown_tool_is_none_or_one_more() => Assert.Equal(new Interval(20.16m, 21.60m), RangeOf(Screwed(4, tools: default)));

    [Fact]
    public void An_unknown_count_gives_a_range_or_no_upper_end()
    {
        Assert.Equal(new Interval(21.60m, 26.64m), RangeOf(Screwed(new(4, 5))));
        Assert.Equal("at least 21.6 s", On(Screwed(new(4, null))).Because("estimated-seconds").Values.Single(value => value.Name == "seconds").Value.Text);
        Assert.Equal(new Interval(0, 100), On(Screwed(new(4, null))).Score);
    }

    [Fact]
    public void A_wait_enters_by_its_column_and_is_left_out_with_waiting()
    {
        // Heat 5 + tool 4 + 330 for 120 s, cut 18 + tool 4 + part 4, screws 4 x 14 + tool 4 + part 4: 429.
        Assert.Equal(154.44m, SecondsOf(Benched.Phone(wait: 120)));
        Assert.Equal(35.64m, SecondsOf(Benched.Phone(wait: 120), (DisassemblyTimeOptions.Waiting, Waiting.LeaveOut)));
        var open = On(Benched.Phone());
        Assert.Equal("waitSeconds", open.Missing.Single().What);
        Assert.Equal(0, open.Score.Low);
    }

    [Fact]
    public void It_says_that_it_is_an_estimate_from_memory_with_source_and_version()
    {
        var reason = On(Benched.Phone(wait: 120)).Because("estimated-seconds");
        Assert.StartsWith("Estimate, proxy table from memory", reason.Text, StringComparison.Ordinal);
        Assert.Contains("table version 1", reason.Text, StringComparison.Ordinal);
        Assert.Contains("BasicMOST", reason.Text, StringComparison.Ordinal);
        Assert.NotNull(reason.Points);
    }

    [Fact]
    public void It_needs_no_observed_time() => Assert.DoesNotContain(On(Benched.Phone(wait: 120)).Reasons, reason => reason.Code == "observed-seconds");

    static RecordBuilder Device(Quantity count) => new RecordBuilder().Part("frame").Part("battery").Part("cover").Tool("driver", ToolClass.Basic).Tool("other", ToolClass.Basic)
        .Joint("screws", ["battery", "frame"], JointKind.Screw, joint => joint with { Count = count });

    static RecordBuilder Screwed(Quantity count, bool removes = false) => Screwed(count, ["driver"], removes);

    static RecordBuilder Screwed(Quantity count, EntryList<string> tools, bool removes = false) =>
        Device(count).Operation("unscrew", OperationAction.Unscrew, tools, ["screws"], removes ? ["battery"] : []);

    static RecordBuilder Twice(string second, bool between = false) => Device(1)
        .Joint("more", ["battery", "frame"], JointKind.Screw)
        .Joint("plug", ["battery", "frame"], JointKind.Connector)
        .Operation("first", OperationAction.Unscrew, ["driver"], between ? ["screws"] : ["screws", "plug"])
        .Operation("bare", OperationAction.Slide, [], between ? ["plug"] : [], after: between ? [new Condition.Done("first")] : [])
        .Operation("last", OperationAction.Unscrew, [second], ["more"], ["battery"], [new Condition.Undone("screws"), new Condition.Undone("plug")]);

    static decimal SecondsOf(RecordBuilder builder, params ReadOnlySpan<(Option, object)> options) => RangeOf(builder, options) is { IsExact: true } exact
        ? exact.Low
        : throw new InvalidOperationException("A range.");

    static Interval RangeOf(RecordBuilder builder, params ReadOnlySpan<(Option, object)> options) =>
        On(builder, options).Because("estimated-seconds").Values.Single(value => value.Name == "seconds").Value.Number;

    static Outcome On(RecordBuilder builder, params ReadOnlySpan<(Option, object)> options)
    {
        var record = builder.Build();
        var outcome = Criterion.On(record, "battery", [Estimated, .. options]);
        outcome.PointsInto(record);
        return outcome;
    }
}
