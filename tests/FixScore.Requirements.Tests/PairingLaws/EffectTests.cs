namespace FixScore.Requirements.Tests.PairingLaws;

/// <summary>
/// Three effects are banned alike: a part cannot be installed or work; function or performance is reduced; a misleading alert. Sources: Colorado
/// HB24-1121, C.R.S. 6-1-1502 and 6-1-1503 (read); Washington HB 1483, session law of 2025 (read); Oregon SB 1596, chapter 69 Oregon Laws 2024
/// (secondary). Whether an alert must both mislead and stay was not read anywhere: one that can be dismissed is unknown.
/// </summary>
public sealed class EffectTests
{
    static readonly (SwapResult Result, string Blocked, string Reduced, string Alert)[] Table =
    [
        (SwapResult.Works, "met", "met", "met"),
        (SwapResult.Notice, "unknown", "unknown", "unknown"),
        (SwapResult.Warning, "unknown", "unknown", "not-met"),
        (SwapResult.Degraded, "unknown", "not-met", "unknown"),
        (SwapResult.Refused, "not-met", "unknown", "unknown"),
    ];

    public static TheoryData<string, SwapResult, string, string> EachEffectEachLawEachResult
    {
        get
        {
            var data = new TheoryData<string, SwapResult, string, string>();
            foreach (var set in Phone.Sets)
                foreach (var (result, blocked, reduced, alert) in Table)
                    foreach (var (rule, status) in Phone.Rules.Zip([blocked, reduced, alert])) data.Add(set, result, rule, status);
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(EachEffectEachLawEachResult))]
    public void A_result_proven_for_a_part_answers_the_effect_it_stands_for(string set, SwapResult result, string rule, string status) =>
        Assert.Equal(status, Word.Of(Phone.WithDisplay.Tried("display", result).Find(set, rule).Status));

    [Theory]
    [InlineData("blocked-part", SwapResult.Refused)]
    [InlineData("reduced-function", SwapResult.Degraded)]
    [InlineData("misleading-alert", SwapResult.Warning)]
    public void What_decides_is_named_with_function_trial_and_places(string rule, SwapResult result)
    {
        var why = Phone.WithDisplayAndBattery.Tried("display", result).Tried("battery", SwapResult.Works).Find("us-co-hb24-1121", rule).Why;
        Assert.Equal(("proven", $"Trials prove it: display (touch: {Word.Of(result)} in trial display-trial)."), (why.Code, why.Text));
        Assert.Equal(["/parts/1", "/swaps/0", "/swaps/0/checks/0"], why.Pointers.Select(pointer => pointer.Text));
    }

    [Fact]
    public void One_trial_can_prove_two_effects()
    {
        var findings = Phone.WithDisplay.Tried("display", SwapResult.Warning, trial => trial with
        {
            Checks = trial.Checks.Add(new() { Function = "brightness", Result = SwapResult.Degraded }),
        }).Check("us-or-sb-1596");
        Assert.Equal([FindingStatus.Unknown, FindingStatus.NotMet, FindingStatus.NotMet], findings.Select(finding => finding.Status));
    }

    [Fact]
    public void A_result_that_may_be_either_proves_neither()
    {
        var findings = Phone.WithDisplay.Tried("display", new OneOf<SwapResult>(SwapResult.Degraded, SwapResult.Refused)).Check("us-wa-hb-1483");
        Assert.All(findings, finding => Assert.Equal((FindingStatus.Unknown, "unsettled"), (finding.Status, finding.Why.Code)));
    }

    [Fact]
    public void An_alert_that_can_be_dismissed_is_open_for_what_was_not_read() => Assert.All(Phone.Sets, set => Assert.Equal(
        ["unsettled", "unsettled", "dismissible"], Phone.WithDisplay.Tried("display", SwapResult.Notice).Check(set).Select(finding => finding.Why.Code)));
}
