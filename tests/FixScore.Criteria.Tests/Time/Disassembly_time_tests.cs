using FixScore.Criteria.Time;
using FixScore.Testing;

namespace FixScore.Criteria.Tests.Time;

/// <summary>The default points are own judgement, no source: 120 s have the top, 1800 s the bottom.</summary>
public sealed class Disassembly_time_tests
{
    static readonly DisassemblyTimeCriterion Criterion = new();
    static readonly (Option, object) LeaveOut = (DisassemblyTimeOptions.Waiting, Waiting.LeaveOut);
    static readonly (Option, object) LeaveOutRecorded = (DisassemblyTimeOptions.Waiting, Waiting.LeaveOutRecorded);

    [Fact]
    public void Two_minutes_have_the_top_half_an_hour_the_bottom()
    {
        Scores(100, Benched.Phone(60, 50, 40, 20));
        Scores(0, Benched.Phone(600, 500, 600, 600));
        Scores(0, Benched.Phone(6000, 500, 600, 600));
    }

    [Fact]
    public void Between_them_points_fall_in_a_straight_line() => Scores(50, Benched.Phone(320, 300, 320, 320));

    [Fact]
    public void A_range_gives_both_ends() => Scores(new(50, 100), Benched.Phone(new(40, 320), 30, new(40, 320), new(40, 320)));

    [Fact]
    public void Waiting_counts_unless_it_is_left_out()
    {
        Scores(0, Benched.Phone(3000, 2900, 10, 10));
        Assert.Equal(100, On(Benched.Phone(3000, 2900, 10, 10), LeaveOutRecorded).Score);
        Assert.Equal("/operations/0", On(Benched.Phone(3000, 2900, 10, 10), LeaveOut).Because("waiting-left-out").Pointers[0].Text);
    }

    [Fact]
    public void A_wait_that_was_not_recorded_may_be_any_part_of_the_operation()
    {
        var outcome = On(Benched.Phone(1800, null, 100, 20), LeaveOut);
        Assert.Equal(new Interval(0, 100), outcome.Score);
        Assert.Equal(["/operations/0", "/operations/1", "/operations/2"], outcome.Missing.Select(missing => missing.At.Text));
        Assert.All(outcome.Missing, missing => Assert.Equal("waitSeconds", missing.What));
    }

    [Fact]
    public void An_operation_without_a_time_makes_it_unknown_and_is_named()
    {
        var outcome = On(Benched.Phone(60, 50, null, 20));
        Assert.Equal(OutcomeKind.Unknown, outcome.Kind);
        Assert.Equal(("/operations/1", "seconds, or footage with times"), (outcome.Missing.Single().At.Text, outcome.Missing.Single().What));
    }

    [Fact]
    public void Footage_gives_the_time_and_two_units_a_range()
    {
        Footage Seen(string unit, int to) => new() { Source = "film", Unit = unit, From = TimeSpan.Zero, To = TimeSpan.FromSeconds(to) };
        var record = Benched.Pulled(pull => pull with { Footage = [Seen("unit-a", 120), Seen("unit-b", 960)] }).Evidence("film", EvidenceKind.Video, "film.mp4");
        Scores(new(50, 100), record);
    }

    [Fact]
    public void The_fastest_way_counts_and_its_reason_says_so()
    {
        var slow = Benched.Phone(600, 500, 600, 600).Operation("drill", OperationAction.Other, [], ["screws"], ["battery"], seconds: 20);
        var reason = On(slow).Because("observed-seconds");
        Assert.Equal("Freeing part battery takes 1220 s as observed, along the route that is fastest by the middle of its ranges: warm, open, drill.", reason.Text);
        Assert.NotNull(reason.Points);
    }

    [Fact]
    public void Both_times_of_an_operation_are_said_side_by_side_and_never_added()
    {
        var outcome = On(Benched.Phone(60, 50, 40, 20));
        Assert.Equal(3, outcome.Reasons.Count(reason => reason.Code == "operation-time"));
        Assert.Equal(
            "Operation unscrew: observed 20 s, estimated 23.04 s; the two are never added together.",
            outcome.Reasons.Last(reason => reason.Code == "operation-time").Text);
        Assert.Equal(120, outcome.Because("observed-seconds").Values.Single(value => value.Name == "seconds").Value.Number.Low);
        Assert.Null(outcome.Because("estimated-seconds").Points);
    }

    [Fact]
    public void What_only_damage_frees_has_the_lowest()
    {
        var outcome = On(Benched.Pulled(pull => pull with { Seconds = 5, Damages = ["frame"] }));
        Assert.Equal(0, outcome.Score);
        Assert.Equal<Interval?>(0, outcome.Because("unreachable").Points);
        Assert.Equal(2, outcome.Reasons.Length);
    }

    [Fact]
    public void What_no_operation_frees_is_unknown()
    {
        var record = new RecordBuilder().Part("frame").Part("battery").Joint("clip", ["battery", "frame"], JointKind.SnapFit).With(each => each with { Operations = [] });
        var outcome = On(record);
        Assert.Equal(OutcomeKind.Unknown, outcome.Kind);
        Assert.Equal("/joints/0", outcome.Missing.Single().At.Text);
    }

    [Fact]
    public void Without_operations_or_joints_it_is_unknown()
    {
        Assert.Equal(OutcomeKind.Unknown, On(Benched.Phone(1, 1, 1, 1).With(record => record with { Operations = default })).Kind);
        Assert.Equal(OutcomeKind.Unknown, On(Benched.Phone(1, 1, 1, 1).With(record => record with { Joints = default, Operations = default })).Kind);
    }

    static void Scores(Interval expected, RecordBuilder builder) => Assert.Equal(expected, On(builder).Score);

    static Outcome On(RecordBuilder builder, params ReadOnlySpan<(Option, object)> options)
    {
        var record = builder.Build();
        var outcome = Criterion.On(record, "battery", options);
        outcome.PointsInto(record);
        return outcome;
    }
}
