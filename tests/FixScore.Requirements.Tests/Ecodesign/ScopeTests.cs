namespace FixScore.Requirements.Tests.Ecodesign;

/// <summary>
/// Who is bound and from when. Source: Regulation (EU) 2023/1670, consolidated text of 20 June 2025 (read): it applies from 20 June 2025; spares are
/// owed from then or from one month after first placement on the market, whichever is later; Part B is for smartphones, Part D for slate tablets.
/// </summary>
public sealed class ScopeTests
{
    [Fact]
    public void Nothing_applies_the_day_before() => Assert.All(Device.Phone.Device(device => device with { Released = new(2025, 1, 1) }).Check("2025-06-19"), finding =>
        Assert.Equal((FindingStatus.NotApplicable, "before-start", "The rules apply from 2025-06-20; asked about is 2025-06-19."), (finding.Status, finding.Why.Code, finding.Why.Text)));

    [Fact]
    public void It_applies_on_the_day() => Assert.Equal(FindingStatus.Unknown,
        Device.Phone.Device(device => device with { Released = new(2025, 1, 1) }).Find("spares-to-professionals.battery", "2025-06-20").Status);

    [Fact]
    public void Other_kinds_of_device_are_not_bound() => Assert.All(Device.Other.Check(), finding =>
        Assert.Equal((FindingStatus.NotApplicable, "other-kind"), (finding.Status, finding.Why.Code)));

    [Fact]
    public void Nothing_applies_before_the_release() => Assert.All(Device.Phone.Check("2025-06-30"), finding =>
        Assert.Equal((FindingStatus.NotApplicable, "not-yet-released"), (finding.Status, finding.Why.Code)));

    [Theory]
    [InlineData("2025-07-31", FindingStatus.NotApplicable, "spares-not-yet-due")]
    [InlineData("2025-08-01", FindingStatus.Unknown, "part-not-recorded")]
    public void Spares_are_owed_from_one_month_after_release(string date, FindingStatus status, string code)
    {
        foreach (var rule in (string[])["spares-to-professionals.battery", "spares-to-end-users.battery", "spare-delivery.battery"])
            Assert.Equal((status, code), (Device.Phone.Find(rule, date).Status, Device.Phone.Find(rule, date).Why.Code));
    }

    [Fact]
    public void Only_spares_wait_for_that_month() => Assert.Equal(FindingStatus.Met, Device.Phone.Held("battery").Find("disassembly.battery", "2025-07-01").Status);

    [Fact]
    public void An_unknown_release_is_taken_as_past() => Assert.Equal("part-not-recorded",
        Device.Phone.Device(device => device with { Released = null }).Find("spares-to-professionals.battery").Why.Code);

    [Theory]
    [InlineData("spares-to-professionals.battery", "1.1(1)(a)")]
    [InlineData("spares-to-end-users.battery", "1.1(1)(c)")]
    [InlineData("spares-not-bundled", "1.1(1)")]
    [InlineData("spare-parts-list", "1.1(1)")]
    [InlineData("repair-information.identification", "1.1(2)(e)")]
    [InlineData("repair-information-fees", "1.1(2)")]
    [InlineData("repair-instructions.battery", "1.1(2)")]
    [InlineData("spare-delivery.battery", "1.1(3)")]
    [InlineData("disassembly.hinge", "1.1(5)")]
    [InlineData("disassembly.battery", "1.1(5)")]
    [InlineData("serialised-parts.battery", "1.1(7)")]
    public void A_point_stands_in_Part_B_for_phones_and_in_Part_D_for_tablets(string rule, string point)
    {
        Assert.Equal($"Annex II B {point}", Device.Phone.Find(rule).Article);
        Assert.Equal($"Annex II D {point}", Device.Tablet.Find(rule).Article);
        Assert.Equal($"Annex II B/D {point}", Device.Other.Find(rule).Article);
    }

    [Fact]
    public void Updates_stand_in_different_points()
    {
        Assert.Equal("Annex II B 1.2(6)", Device.Phone.Find("system-updates.security").Article);
        Assert.Equal("Annex II D 1.2(5)", Device.Tablet.Find("system-updates.security").Article);
        Assert.Equal("Annex II B 1.2(6), D 1.2(5)", Device.Other.Find("system-updates.security").Article);
    }
}
