using System.Reflection;
using FixScore.Requirements.Ecodesign;

namespace FixScore.Requirements.Tests.Ecodesign;

/// <summary>What the set says of itself, and that it answers any record.</summary>
public sealed class SetTests
{
    [Fact]
    public void The_assembly_names_a_plugin_that_offers_it() =>
        Assert.IsType<EcodesignPlugin>(typeof(EcodesignPlugin).Assembly.GetCustomAttribute<PluginAttribute>()!.Create());

    [Fact]
    public void It_names_the_consolidated_text_and_is_no_legal_advice()
    {
        var info = Device.Set.Item.Info;
        Assert.Equal("eu-2023-1670", info.Id);
        Assert.Contains("consolidated text of 20 June 2025 (read)", info.Source, StringComparison.Ordinal);
        Assert.StartsWith("A screening aid, not legal advice", info.Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_record_gets_every_finding_once_the_same_every_time() => Answering.Of(Device.Set, new(2027, 3, 1), 80);

    [Fact]
    public void Nothing_is_met_by_silence() => Assert.DoesNotContain(Device.Phone.Check(), finding => finding.Status is FindingStatus.Met or FindingStatus.NotMet);

    [Fact]
    public void A_record_that_tells_less_decides_nothing_more() => Answering.LessWhenLessIsKnown(Device.Set, new(2027, 3, 1));
}
