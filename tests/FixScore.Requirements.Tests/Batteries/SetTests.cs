using System.Reflection;
using FixScore.Requirements.Batteries;

namespace FixScore.Requirements.Tests.Batteries;

/// <summary>What the set says of itself, when it applies, and that it answers any record. Source of the day: Regulation (EU) 2023/1542, Art. 96(2)(a) (read).</summary>
public sealed class SetTests
{
    [Fact]
    public void The_assembly_names_a_plugin_that_offers_it() =>
        Assert.IsType<BatteriesPlugin>(typeof(BatteriesPlugin).Assembly.GetCustomAttribute<PluginAttribute>()!.Create());

    [Fact]
    public void It_names_the_law_and_is_no_legal_advice()
    {
        var info = Powered.Set.Item.Info;
        Assert.Equal("eu-2023-1542", info.Id);
        Assert.Contains("Regulation (EU) 2023/1542, Articles 11, 95 and 96 (read", info.Source, StringComparison.Ordinal);
        Assert.StartsWith("A screening aid, not legal advice", info.Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void It_applies_from_18_February_2027()
    {
        RecordBuilder old = Powered.Device.Device(device => device with { Released = new(2026, 1, 1) });
        Assert.All(old.Check("2027-02-17"), finding => Assert.Equal(
            (FindingStatus.NotApplicable, "before-start", "Article 11 applies from 2027-02-18 (Article 96(2)(a)); asked about is 2027-02-17."),
            (finding.Status, finding.Why.Code, finding.Why.Text)));
        Assert.Equal(FindingStatus.Unknown, old.Find("readily-removable", "2027-02-18").Status);
    }

    [Fact]
    public void It_does_not_apply_before_the_release() => Assert.All(Powered.Device.Check("2027-02-28"), finding => Assert.Equal("not-yet-released", finding.Why.Code));

    [Fact]
    public void A_device_without_battery_is_not_bound()
    {
        Assert.All(Powered.Bare.Absent("battery").Check(), finding => Assert.Equal(FindingStatus.NotApplicable, finding.Status));
        Assert.DoesNotContain(Powered.Bare.Check(), finding => finding.Status is FindingStatus.Met or FindingStatus.NotMet);
    }

    [Fact]
    public void Nothing_is_met_by_silence() =>
        Assert.DoesNotContain(Powered.Device.Check(), finding => finding.Status is FindingStatus.Met or FindingStatus.NotMet);

    [Fact]
    public void Any_record_gets_every_finding_once_the_same_every_time() => Answering.Of(Powered.Set, new(2027, 3, 1), 8);

    [Fact]
    public void A_record_that_tells_less_decides_nothing_more() => Answering.LessWhenLessIsKnown(Powered.Set, new(2027, 3, 1));
}
