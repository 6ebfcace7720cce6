using System.Globalization;

namespace FixScore.Requirements.Tests.PairingLaws;

/// <summary>
/// Equipment first made and sold after 1 January 2025 (Oregon SB 1596, secondary) or 1 January 2026 (Colorado HB24-1121, read; Washington HB 1483, read).
/// Kinds not covered: Colorado read, Oregon secondary, Washington not read.
/// </summary>
public sealed class ScopeTests
{
    static RecordBuilder Refusing(string? released, string kind = "smartphone") => Phone.WithDisplay
        .Device(device => device with { Kind = kind, Released = released is null ? null : DateOnly.Parse(released, CultureInfo.InvariantCulture) })
        .Tried("display", SwapResult.Refused);

    static (FindingStatus, string) Blocked(string set, RecordBuilder builder, string date = "2026-07-01") =>
        builder.Check(set, date)[0] is var finding ? (finding.Status, finding.Why.Code) : default;

    [Theory]
    [InlineData("us-or-sb-1596", "2024-12-31", FindingStatus.NotApplicable, "released-before")]
    [InlineData("us-or-sb-1596", "2025-01-01", FindingStatus.Unknown, "released-on-the-day")]
    [InlineData("us-or-sb-1596", "2025-01-02", FindingStatus.NotMet, "proven")]
    [InlineData("us-co-hb24-1121", "2025-12-31", FindingStatus.NotApplicable, "released-before")]
    [InlineData("us-co-hb24-1121", "2026-01-01", FindingStatus.Unknown, "released-on-the-day")]
    [InlineData("us-co-hb24-1121", "2026-01-02", FindingStatus.NotMet, "proven")]
    [InlineData("us-wa-hb-1483", "2025-12-31", FindingStatus.NotApplicable, "released-before")]
    [InlineData("us-wa-hb-1483", "2026-01-01", FindingStatus.Unknown, "released-on-the-day")]
    [InlineData("us-wa-hb-1483", "2026-01-02", FindingStatus.NotMet, "proven")]
    public void A_model_is_covered_when_it_was_released_after_the_day(string set, string released, FindingStatus status, string code) =>
        Assert.Equal((status, code), Blocked(set, Refusing(released)));

    [Theory]
    [InlineData("us-or-sb-1596", "2024-12-31", "before-law")]
    [InlineData("us-or-sb-1596", "2025-01-01", "proven")]
    [InlineData("us-co-hb24-1121", "2025-12-31", "before-law")]
    [InlineData("us-co-hb24-1121", "2026-01-01", "proven")]
    [InlineData("us-wa-hb-1483", "2025-12-31", "before-law")]
    [InlineData("us-wa-hb-1483", "2026-01-01", "proven")]
    public void Before_the_day_nobody_is_bound(string set, string asked, string code) => Assert.Equal(code, Blocked(set, Refusing("2026-06-01"), asked).Item2);

    [Fact]
    public void An_unrecorded_release_leaves_it_open_and_still_says_what_trials_show() => Assert.All(Phone.Sets, set =>
    {
        var finding = Refusing(null).Find(set, "blocked-part");
        Assert.Equal((FindingStatus.Unknown, "release-unknown"), (finding.Status, finding.Why.Code));
        Assert.EndsWith("the release of this model is not recorded. Trials prove it: display (touch: refused in trial display-trial).", finding.Why.Text, StringComparison.Ordinal);
        Assert.Equal("/device", finding.Why.Pointers[0].Text);
    });

    [Theory]
    [InlineData("us-co-hb24-1121", "game-console", FindingStatus.NotApplicable)]
    [InlineData("us-co-hb24-1121", "medical-device", FindingStatus.NotApplicable)]
    [InlineData("us-co-hb24-1121", "motor-vehicle", FindingStatus.NotApplicable)]
    [InlineData("us-co-hb24-1121", "security-equipment", FindingStatus.NotApplicable)]
    [InlineData("us-co-hb24-1121", "powered-wheelchair", FindingStatus.NotMet)]
    [InlineData("us-or-sb-1596", "game-console", FindingStatus.NotApplicable)]
    [InlineData("us-or-sb-1596", "electric-toothbrush", FindingStatus.NotApplicable)]
    [InlineData("us-or-sb-1596", "farm-equipment", FindingStatus.NotApplicable)]
    [InlineData("us-or-sb-1596", "hvac-equipment", FindingStatus.NotApplicable)]
    [InlineData("us-or-sb-1596", "powered-wheelchair", FindingStatus.Unknown)]
    [InlineData("us-wa-hb-1483", "game-console", FindingStatus.Unknown)]
    public void Kinds_that_a_law_leaves_out_are_not_judged(string set, string kind, FindingStatus status) =>
        Assert.Equal(status, Blocked(set, Refusing("2026-06-01", kind)).Item1);

    // Oregon phones: secondary. Washington: from memory. The rest: our reading of "electronic equipment".
    [Theory]
    [InlineData("smartphone")]
    [InlineData("slate-tablet")]
    [InlineData("laptop")]
    public void Phones_tablets_and_laptops_are_covered_everywhere(string kind) =>
        Assert.All(Phone.Sets, set => Assert.Equal((FindingStatus.NotMet, "proven"), Blocked(set, Refusing("2026-06-01", kind))));

    [Fact]
    public void Any_other_kind_is_open() => Assert.All(Phone.Sets, set => Assert.Equal((FindingStatus.Unknown, "kind-open"), Blocked(set, Refusing("2026-06-01", "toaster"))));

    [Fact]
    public void What_is_certainly_not_covered_is_not_left_open_for_what_is_unknown() =>
        Assert.Equal((FindingStatus.NotApplicable, "kind-not-covered"), Blocked("us-co-hb24-1121", Refusing(null, "game-console")));
}
