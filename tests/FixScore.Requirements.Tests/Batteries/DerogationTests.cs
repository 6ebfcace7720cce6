namespace FixScore.Requirements.Tests.Batteries;

/// <summary>Regulation (EU) 2023/1542, Art. 11(2) and (3) (read): derogations, for reasons that a record does not hold.</summary>
public sealed class DerogationTests
{
    static readonly (string Rule, string Article)[] All =
        [("derogation-wet-use", "Art. 11(2)(a)"), ("derogation-medical", "Art. 11(2)(b)"), ("derogation-continuous-power", "Art. 11(3)")];

    [Fact]
    public void None_is_needed_when_the_battery_is_readily_removable() => Assert.All(All, each =>
        Powered.Opened(ToolClass.Basic).Says(each.Rule, each.Article, FindingStatus.NotApplicable, "not-needed"));

    [Fact]
    public void Else_a_record_does_not_tell() => Assert.All(All, each => Powered.Opened(ToolClass.Proprietary)
        .Device(device => device with { Kind = "shaver" }).Says(each.Rule, each.Article, FindingStatus.Unknown, "derogation-unknown"));

    [Theory]
    [InlineData("smartphone")]
    [InlineData("slate-tablet")]
    [InlineData("laptop")]
    public void Some_kinds_are_neither_for_wet_use_nor_medical(string kind)
    {
        RecordBuilder Failing() => Powered.Opened(ToolClass.Proprietary).Device(device => device with { Kind = kind });
        Failing().Says("derogation-wet-use", "Art. 11(2)(a)", FindingStatus.NotApplicable, "kind-without-derogation");
        Failing().Says("derogation-medical", "Art. 11(2)(b)", FindingStatus.NotApplicable, "kind-without-derogation");
        Failing().Says("derogation-continuous-power", "Art. 11(3)", FindingStatus.Unknown, "derogation-unknown");
    }
}
