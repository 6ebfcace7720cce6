namespace FixScore.Requirements.Tests.Ecodesign;

/// <summary>Annex II B 1.2(6), D 1.2(5), consolidated text of 20 June 2025 (read): updates, if provided, for at least 5 years after end of placement.</summary>
public sealed class SystemUpdateTests
{
    static RecordBuilder Supported(Quantity years, OneOf<CountedFrom> from) => Device.Phone.Support(support => support with { SecurityUpdateYears = years, CountedFrom = from });

    static void Says(RecordBuilder builder, FindingStatus status, string code) => builder.Says("system-updates.security", "Annex II B 1.2(6)", status, code);

    [Fact]
    public void Five_years_are_asked()
    {
        Says(Supported(5, CountedFrom.EndOfPlacement), FindingStatus.Met, "updates-years");
        Says(Supported(4.5m, CountedFrom.EndOfPlacement), FindingStatus.NotMet, "updates-years");
        Says(Supported(new(4, 6), CountedFrom.EndOfPlacement), FindingStatus.Unknown, "updates-years");
    }

    [Theory]
    [InlineData(CountedFrom.Release)]
    [InlineData(CountedFrom.Purchase)]
    public void Years_counted_from_an_earlier_day_can_only_be_too_few(CountedFrom from)
    {
        Says(Supported(4, from), FindingStatus.NotMet, "updates-years");
        Says(Supported(8, from), FindingStatus.Unknown, "updates-years");
    }

    [Fact]
    public void Updates_that_are_not_provided_are_not_asked_for()
    {
        Says(Supported(0, CountedFrom.EndOfPlacement), FindingStatus.NotApplicable, "updates-not-provided");
        Says(Supported(new(0, 3), CountedFrom.EndOfPlacement), FindingStatus.Unknown, "updates-maybe-none");
    }

    [Fact]
    public void Each_kind_of_update_is_judged_by_itself()
    {
        var findings = Device.Phone.Support(support => support with { CorrectiveUpdateYears = 5, FunctionalityUpdateYears = 3, CountedFrom = CountedFrom.EndOfPlacement }).Check();
        Assert.Equal(
            [("system-updates.security", FindingStatus.Unknown), ("system-updates.corrective", FindingStatus.Met), ("system-updates.functionality", FindingStatus.NotMet)],
            findings.TakeLast(3).Select(finding => (finding.Rule, finding.Status)));
    }

    [Fact]
    public void Without_support_nothing_is_known() => Says(Device.Phone, FindingStatus.Unknown, "updates-not-recorded");
}
