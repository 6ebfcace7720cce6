using FixScore.Criteria.Disassembly;
using FixScore.Testing;

namespace FixScore.Criteria.Tests.Disassembly;

/// <summary>Regulation (EU) 2023/1669 Annex IV point 5, fasteners: 5 reusable, 3 resupplied, 1 removable; terms in Annex I (16) to (19).</summary>
public sealed class Fastener_reuse_tests
{
    static readonly FastenerReuseCriterion Criterion = new();
    static readonly (Option, object) Incremental = (WayOptions.From, WorkFrom.Previous);

    [Fact]
    public void Reusable_has_five() => Assert.Equal(5, OnCover(Device.Phone(glue: Reuse.Reusable).With(NoSpares)).Score);

    [Fact]
    public void Resupplied_has_three() => Assert.Equal(3, OnCover(Device.Phone().Spare("cover", Audience.Public, WithFasteners)).Score);

    [Fact]
    public void Removable_has_one() => Assert.Equal(1, OnCover(Device.Phone().With(NoSpares)).Score);

    [Fact]
    public void Neither_has_no_level()
    {
        var record = Device.Phone(glue: Reuse.Neither);
        Assert.Equal(new Interval(1, 5), OnCover(record).Score);
        Assert.Equal(1, OnCover(record, (Options.NoLevel, WhenNoLevel.Lowest)).Score);
        Assert.Equal(2, OnCover(record, (FastenerReuseOptions.Levels, Levels.Of(("neither", 2m)))).Score);
    }

    // Annex IV point 5: mixed types within the work, the worst level counts.
    [Fact]
    public void The_worst_of_all_undone_counts()
    {
        var outcome = OnBattery(Device.Phone().With(NoSpares), ["back-cover", "battery"]);
        Assert.Equal(1, outcome.Score);
        Assert.Equal(["glue", "screws"], outcome.Reasons.Where(reason => reason.Code == "fastener").Select(reason => reason.Values[0].Value.Text));
    }

    // Annex IV point 5: the work to remove the part, starting with the previous priority part already removed.
    [Fact]
    public void Only_the_work_after_the_previous_priority_part_counts_by_option()
    {
        var outcome = OnBattery(Device.Phone(), ["back-cover", "battery"], Incremental);
        Assert.Equal(5, outcome.Score);
        Assert.Equal("Judged for part battery: unscrew, on the shortest way, from the removal of cover in open on.", outcome.Because("judged-work").Text);
    }

    [Fact]
    public void A_part_of_no_judged_role_is_not_the_previous_one() =>
        Assert.Equal(1, OnBattery(Device.Phone().With(NoSpares), ["battery", "display-assembly"], Incremental).Score);

    // Annex I (20): moving a part away counts as removal, also when only partly disconnected.
    [Fact]
    public void A_part_moved_aside_is_a_previous_one()
    {
        var record = Device.Phone().Joint("ribbon", ["cover", "frame"], JointKind.Connector).With(record => record with
        {
            Operations = [.. record.Operations.Select(each => each.Id == "open" ? each with { Removes = [], Moves = ["cover"], HoldsBy = ["ribbon"] } : each)],
        });
        Assert.Equal(5, OnBattery(record, ["back-cover", "battery"], Incremental).Score);
    }

    [Fact]
    public void A_part_replaced_together_with_the_judged_one_is_not_the_previous_one()
    {
        var record = Device.Phone().With(NoSpares).Joint("weld", ["cover", "battery"], JointKind.Weld, joint => joint with { Integral = true })
            .With(record => record with { Joints = [.. record.Joints.Select(joint => joint with { Under = [] })] });
        Assert.Equal(1, OnBattery(record, ["back-cover", "battery"], Incremental).Score);
    }

    [Fact]
    public void What_comes_out_with_the_judged_part_is_not_the_previous_one() => Assert.Equal(
        5, OnBattery(Device.Phone(), ["back-cover", "battery", "rear-camera"], Incremental).Score);

    [Fact]
    public void A_part_freed_inside_another_counts_from_the_removal_of_that_one()
    {
        var record = Device.Phone(screws: Reuse.Removable).With(NoSpares)
            .Joint("clip", ["camera", "battery"], JointKind.SnapFit, joint => joint with { Reuse = Reuse.Reusable })
            .Operation("unclip", OperationAction.Unclip, [], ["clip"], ["camera"], [new Condition.Removed("battery")]).Build();
        var outcome = Criterion.Judged(record, "camera", ["battery", "rear-camera"], Incremental);
        Assert.Equal(5, outcome.Score);
        Assert.Equal("Judged for part camera: unclip, on the shortest way, from the removal of battery in unscrew on.", outcome.Because("judged-work").Text);
    }

    [Fact]
    public void A_part_that_was_out_before_its_carrier_is_not_taken_again()
    {
        var record = new RecordBuilder().Part("frame").Part("bracket").Part("camera", "rear-camera", on: "bracket").Part("battery")
            .Joint("clip", ["camera", "bracket"], JointKind.SnapFit, joint => joint with { Reuse = Reuse.Reusable })
            .Joint("tape", ["bracket", "frame"], JointKind.Tape, joint => joint with { Reuse = Reuse.Removable, Under = ["camera"] })
            .Joint("latch", ["battery", "frame"], JointKind.Latch, joint => joint with { Reuse = Reuse.Reusable, Under = ["bracket"] })
            .Operation("unclip", OperationAction.Unclip, [], ["clip"], ["camera"])
            .Operation("untape", OperationAction.Peel, [], ["tape"], ["bracket"])
            .Operation("unlatch", OperationAction.Pull, [], ["latch"], ["battery"]).With(NoSpares);
        var outcome = OnBattery(record, ["rear-camera", "battery"], Incremental);
        Assert.Equal(1, outcome.Score);
        Assert.Equal("Judged for part battery: untape, unlatch, on the shortest way, from the removal of camera in unclip on.", outcome.Because("judged-work").Text);
    }

    [Fact]
    public void Where_no_fastener_is_undone_nothing_is_lost()
    {
        var record = new RecordBuilder().Part("frame").Part("battery").Joint("pads", ["battery", "frame"], JointKind.Contact)
            .Operation("lift", OperationAction.Lift, [], removes: ["battery"]).Build();
        Assert.Equal(5, Criterion.OnBattery(record).Score);
        Assert.Equal<Interval?>(5, Criterion.OnBattery(record).Because("nothing-undone").Points);
    }

    [Fact]
    public void Unknown_reuse_leaves_every_level_open_and_is_asked_for()
    {
        var outcome = OnCover(Device.Phone(glue: default(OneOf<Reuse>)));
        Assert.Equal(new Interval(1, 5), outcome.Score);
        Assert.Contains(outcome.Missing, missing => (missing.At.Text, missing.What) == ("/joints/0", "reuse"));
    }

    [Fact]
    public void Without_a_word_on_spares_a_removable_fastener_may_be_resupplied()
    {
        var outcome = OnCover(Device.Phone());
        Assert.Equal(new Interval(1, 3), outcome.Score);
        Assert.Equal("a spare for it, and whether glue comes with it", Assert.Single(outcome.Missing).What);
    }

    [Fact]
    public void A_part_that_only_damage_frees_has_the_lowest() => Assert.Equal(1, OnBattery(Device.Phone().With(record => record with
    {
        Operations = [.. record.Operations.Select(each => each.Id == "open" ? each with { Damages = ["cover"] } : each)],
    }), ["battery"], (Options.NoLevel, WhenNoLevel.Unknown)).Score);

    [Fact]
    public void A_part_of_which_nothing_tells_how_it_comes_free_is_unknown() =>
        Assert.Equal(OutcomeKind.Unknown, OnCover(Device.Phone().With(record => record with { Operations = default })).Kind);

    static Outcome OnCover(RecordBuilder record, params ReadOnlySpan<(Option, object)> options) =>
        Criterion.Judged(record.Build(), "cover", ["back-cover"], options);

    static Outcome OnBattery(RecordBuilder record, ImmutableArray<string> roles, params ReadOnlySpan<(Option, object)> options) =>
        Criterion.Judged(record.Build(), "battery", roles, options);

    static TeardownRecord NoSpares(TeardownRecord record) => record with { Spares = [] };

    static Spare WithFasteners(Spare spare) => spare with { FastenersIncluded = new(true, []) };
}
