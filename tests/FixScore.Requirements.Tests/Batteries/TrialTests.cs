namespace FixScore.Requirements.Tests.Batteries;

/// <summary>
/// Regulation (EU) 2023/1542, Art. 11(6) (read): another compatible battery does as well; Art. 11(8) (read): software does not impede it. What a trial
/// must show is our own reading.
/// </summary>
public sealed class TrialTests
{
    const string Third = "third-battery";

    static RecordBuilder Device(UnitSource source = UnitSource.CompatibleSpare) => Powered.Device.Unit(Third, source);

    static void Replaceable(RecordBuilder builder, FindingStatus status, string code) => builder.Says("readily-replaceable", "Art. 11(6)", status, code);

    static void Software(RecordBuilder builder, FindingStatus status, string code) => builder.Says("no-software-barrier", "Art. 11(8)", status, code);

    [Theory]
    [InlineData(SwapResult.Works, FindingStatus.Met, "compatible-works")]
    [InlineData(SwapResult.Notice, FindingStatus.Met, "compatible-works")]
    [InlineData(SwapResult.Warning, FindingStatus.Met, "compatible-works")]
    [InlineData(SwapResult.Degraded, FindingStatus.NotMet, "compatible-loss")]
    [InlineData(SwapResult.Refused, FindingStatus.NotMet, "compatible-loss")]
    [InlineData(SwapResult.Untested, FindingStatus.Unknown, "compatible-open")]
    public void A_compatible_battery_loses_no_function(SwapResult result, FindingStatus status, string code) => Replaceable(Device().Tried(Third, result), status, code);

    [Theory]
    [InlineData(SwapResult.Works, FindingStatus.Met, "not-tied")]
    [InlineData(SwapResult.Notice, FindingStatus.Unknown, "tied")]
    [InlineData(SwapResult.Warning, FindingStatus.Unknown, "tied")]
    [InlineData(SwapResult.Degraded, FindingStatus.NotMet, "tied")]
    [InlineData(SwapResult.Refused, FindingStatus.NotMet, "tied")]
    [InlineData(SwapResult.Untested, FindingStatus.Unknown, "suspect")]
    public void Software_does_not_impede_it(SwapResult result, FindingStatus status, string code) => Software(Device().Tried(Third, result), status, code);

    [Fact]
    public void A_result_that_may_be_a_loss_is_open()
    {
        var result = new OneOf<SwapResult>(SwapResult.Warning, SwapResult.Degraded);
        Replaceable(Device().Tried(Third, result), FindingStatus.Unknown, "compatible-open");
        Software(Device().Tried(Third, result), FindingStatus.Unknown, "tied");
    }

    [Theory]
    [InlineData(UnitSource.MakerSpare)]
    [InlineData(UnitSource.UsedSpare)]
    [InlineData(UnitSource.Device)]
    public void A_battery_of_the_maker_is_no_proof_for_a_compatible_one(UnitSource source) =>
        Replaceable(Device(source).Tried(Third, SwapResult.Works), FindingStatus.Unknown, "no-compatible-trial");

    [Fact]
    public void A_tie_proven_with_the_makers_battery_impedes_as_well() => Software(Device(UnitSource.UsedSpare).Tried(Third, SwapResult.Refused), FindingStatus.NotMet, "tied");

    [Fact]
    public void Without_trials_nothing_is_known()
    {
        Replaceable(Powered.Device, FindingStatus.Unknown, "no-compatible-trial");
        Software(Powered.Device, FindingStatus.Unknown, "not-tried");
    }

    [Theory]
    [InlineData(LockState.Unlocked)]
    [InlineData(LockState.Relocked)]
    [InlineData(null)]
    public void Only_a_boot_lock_as_delivered_counts(LockState? state)
    {
        RecordBuilder Refused() => Device().Tried(Third, SwapResult.Refused, trial => trial with { LockState = state });
        Replaceable(Refused(), FindingStatus.Unknown, "no-compatible-trial");
        Software(Refused(), FindingStatus.Unknown, "not-tried");
    }

    [Fact]
    public void A_loss_that_a_procedure_cures_is_open()
    {
        RecordBuilder Cured() => Device().Tried(Third, SwapResult.Refused)
            .Tried(Third, SwapResult.Works, trial => trial with { Id = "after", Procedure = SwapProcedure.Calibration });
        Assert.Equal(FindingStatus.Unknown, Cured().Find("readily-replaceable").Status);
        Software(Cured(), FindingStatus.Unknown, "tied");
    }

    [Fact]
    public void A_battery_tried_only_after_a_procedure_is_open() => Software(
        Device().Tried(Third, SwapResult.Works, trial => trial with { Procedure = SwapProcedure.Authorisation }), FindingStatus.Unknown, "works-after-procedure");

    [Fact]
    public void Trials_that_contradict_each_other_prove_nothing()
    {
        RecordBuilder Both() => Device().Tried(Third, SwapResult.Refused).Tried(Third, SwapResult.Works, trial => trial with { Id = "again" });
        Replaceable(Both(), FindingStatus.Unknown, "compatible-open");
        Software(Both(), FindingStatus.Unknown, "contradictory-trials");
    }

    [Fact]
    public void The_worst_software_counts() => Software(
        Device().Tried(Third, SwapResult.Works).Tried(Third, SwapResult.Refused, trial => trial with { Id = "later", Software = "2.0" }), FindingStatus.NotMet, "tied");

    [Fact]
    public void A_device_without_battery_has_none_to_replace()
    {
        Replaceable(Powered.Bare.Absent("battery"), FindingStatus.NotApplicable, "no-battery");
        Software(Powered.Bare.Absent("battery"), FindingStatus.NotApplicable, "no-battery");
    }
}
