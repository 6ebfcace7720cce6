using System.Globalization;
using FixScore.Requirements.Batteries;

namespace FixScore.Requirements.Tests.Batteries;

/// <summary>Invented devices with a battery, released when Article 11 of Regulation (EU) 2023/1542 holds, and findings about them.</summary>
static class Powered
{
    static readonly Catalogue Law = Catalogue.Of(new BatteriesPlugin());

    public static Installed<IRequirementSet> Set => Law.Requirements[0];

    public static RecordBuilder Bare => new RecordBuilder().Device(device => device with { Kind = "laptop", Released = new(2027, 3, 1) }).Part("mainboard").Part("frame");

    public static RecordBuilder Device => Bare.Part("battery");

    /// <summary>A device of which one operation with one tool frees the battery.</summary>
    public static RecordBuilder Opened(OneOf<ToolClass> tool, Func<Tool, Tool>? configureTool = null, Func<Operation, Operation>? configure = null) => Device
        .Screw("screws", ["battery", "frame"], "cross-h", 1.6m, 3)
        .Tool("driver", tool, configureTool)
        .Operation("free", OperationAction.Unscrew, ["driver"], ["screws"], ["battery"], configure: configure);

    /// <summary>A trial with a battery of a unit, boot lock as delivered and nothing done afterwards unless <paramref name="change"/> says so.</summary>
    public static RecordBuilder Tried(this RecordBuilder builder, string unit, OneOf<SwapResult> result, Func<SwapTrial, SwapTrial>? change = null)
    {
        var trial = new SwapTrial
        {
            Id = $"trial-of-{unit}", Host = "unit-a", LockState = LockState.Locked, Software = "1.0", Procedure = SwapProcedure.None,
            Installed = [new("battery", unit)], Checks = [new() { Function = "charging", Result = result }],
        };
        return builder.Swap(change?.Invoke(trial) ?? trial);
    }

    public static ImmutableArray<Finding> Check(this RecordBuilder builder, string date = "2027-04-01") =>
        Set.Check(builder.ToCase(), DateOnly.Parse(date, CultureInfo.InvariantCulture));

    public static Finding Find(this RecordBuilder builder, string rule, string date = "2027-04-01") => builder.Check(date).Single(finding => finding.Rule == rule);

    /// <summary>Fails unless the finding on a rule has this article, status and code.</summary>
    public static void Says(this RecordBuilder builder, string rule, string article, FindingStatus status, string code)
    {
        var finding = builder.Find(rule);
        Assert.Equal((article, status, code), (finding.Article, finding.Status, finding.Why.Code));
    }
}
