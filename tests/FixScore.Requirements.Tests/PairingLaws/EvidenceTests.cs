namespace FixScore.Requirements.Tests.PairingLaws;

/// <summary>What trials must show before a finding is more than unknown. The rules are our own reading; no law speaks of trials.</summary>
public sealed class EvidenceTests
{
    static Finding Blocked(RecordBuilder builder) => builder.Find("us-co-hb24-1121", "blocked-part");

    static (FindingStatus, string) Answer(RecordBuilder builder) => (Blocked(builder).Status, Blocked(builder).Why.Code);

    [Fact]
    public void Met_names_every_part_that_works()
    {
        var why = Blocked(Phone.WithDisplayAndBattery.Tried("display battery", SwapResult.Works)).Why;
        Assert.Equal(("cleared", "Parts of another unit work like the originals: display; battery."), (why.Code, why.Text));
    }

    [Fact]
    public void A_part_never_tried_leaves_it_open_and_is_named()
    {
        var finding = Blocked(Phone.WithDisplayAndBattery.Tried("display", SwapResult.Works));
        Assert.Equal((FindingStatus.Unknown, "not-tried"), (finding.Status, finding.Why.Code));
        Assert.Equal("Not tried with the boot lock as delivered: battery.", finding.Why.Text);
        Assert.Equal(["/parts/2"], finding.Why.Pointers.Select(pointer => pointer.Text));
    }

    [Fact]
    public void A_part_never_tried_does_not_hide_a_proven_effect() =>
        Assert.Equal((FindingStatus.NotMet, "proven"), Answer(Phone.WithDisplayAndBattery.Tried("display", SwapResult.Refused)));

    [Fact]
    public void Inert_parts_need_no_trial() => Assert.Equal(FindingStatus.Met, Blocked(Phone.WithDisplay.Part("frame").Tried("display", SwapResult.Works)).Status);

    [Fact]
    public void Without_any_trial_nothing_is_known() => Assert.Equal((FindingStatus.Unknown, "not-tried"), Answer(Phone.WithDisplay));

    [Fact]
    public void A_record_of_a_main_board_alone_says_so() => Assert.Equal((FindingStatus.Unknown, "no-part"), Answer(Phone.Bare));

    [Fact]
    public void Two_parts_swapped_at_once_are_suspects() =>
        Assert.Equal((FindingStatus.Unknown, "unsettled"), Answer(Phone.WithDisplayAndBattery.Tried("display battery", SwapResult.Refused)));

    [Fact]
    public void Parts_that_are_replaced_together_are_one() =>
        Assert.Equal((FindingStatus.NotMet, "proven"), Answer(Phone.WithDisplayAndBattery.Integral("display", "battery").Tried("display", SwapResult.Refused)));

    [Fact]
    public void Trials_that_contradict_each_other_prove_nothing() => Assert.Equal((FindingStatus.Unknown, "unsettled"),
        Answer(Phone.WithDisplay.Tried("display", SwapResult.Refused).Tried("display", SwapResult.Works, trial => trial with { Id = "again" })));

    [Fact]
    public void A_fault_of_the_host_is_no_effect_of_pairing() => Assert.Equal((FindingStatus.Unknown, "unsettled"),
        Answer(Phone.WithDisplay.Tried("display", SwapResult.Refused).Tried("display", SwapResult.Refused, trial => trial with { Id = "control", Installed = [] })));

    [Theory]
    [InlineData(LockState.Unlocked)]
    [InlineData(LockState.Relocked)]
    [InlineData(null)]
    public void Only_a_boot_lock_as_delivered_counts(LockState? state) => Assert.Equal((FindingStatus.Unknown, "not-tried"),
        Answer(Phone.WithDisplay.Tried("display", SwapResult.Refused, trial => trial with { LockState = state })));

    [Theory]
    [InlineData(SwapProcedure.None)]
    [InlineData(SwapProcedure.Calibration)]
    [InlineData(SwapProcedure.Authorisation)]
    [InlineData(null)]
    public void An_effect_counts_whatever_was_done_after_the_swap(SwapProcedure? procedure) => Assert.Equal((FindingStatus.NotMet, "proven"),
        Answer(Phone.WithDisplay.Tried("display", SwapResult.Refused, trial => trial with { Procedure = procedure })));

    [Theory]
    [InlineData(SwapProcedure.Calibration)]
    [InlineData(SwapProcedure.Notification)]
    [InlineData(SwapProcedure.Authorisation)]
    [InlineData(SwapProcedure.Reset)]
    public void A_part_that_works_after_a_procedure_is_open_because_no_law_was_read_on_who_may_have_to_do_it(SwapProcedure procedure)
    {
        var finding = Blocked(Phone.WithDisplay.Tried("display", SwapResult.Refused)
            .Tried("display", SwapResult.Works, trial => trial with { Id = "after", Procedure = procedure }));
        Assert.Equal((FindingStatus.Unknown, "after-procedure"), (finding.Status, finding.Why.Code));
        Assert.EndsWith($"display (touch: refused in trial display-trial, works after {Word.Of(procedure)}).", finding.Why.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_procedure_on_other_software_restores_nothing() => Assert.Equal((FindingStatus.NotMet, "proven"), Answer(Phone.WithDisplay
        .Tried("display", SwapResult.Refused).Tried("display", SwapResult.Works, trial => trial with { Id = "after", Software = "2.0", Procedure = SwapProcedure.Calibration })));

    [Theory]
    [InlineData(SwapProcedure.Authorisation, "works after authorisation")]
    [InlineData(null, "works, procedure not recorded")]
    public void A_part_that_was_never_tried_without_a_procedure_is_open(SwapProcedure? procedure, string said)
    {
        var finding = Blocked(Phone.WithDisplay.Tried("display", SwapResult.Works, trial => trial with { Procedure = procedure }));
        Assert.Equal((FindingStatus.Unknown, "after-procedure"), (finding.Status, finding.Why.Code));
        Assert.EndsWith($"display ({said}).", finding.Why.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_worst_software_counts() => Assert.Equal((FindingStatus.NotMet, "proven"), Answer(Phone.WithDisplay
        .Tried("display", SwapResult.Works).Tried("display", SwapResult.Refused, trial => trial with { Id = "newer", Software = "2.0" })));
}
