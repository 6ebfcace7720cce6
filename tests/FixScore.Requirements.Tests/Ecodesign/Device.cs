using System.Globalization;
using FixScore.Requirements.Ecodesign;

namespace FixScore.Requirements.Tests.Ecodesign;

/// <summary>Invented phones and tablets, released when Regulation (EU) 2023/1670 holds, and findings about them.</summary>
static class Device
{
    static readonly Catalogue Law = Catalogue.Of(new EcodesignPlugin());

    public static Installed<IRequirementSet> Set => Law.Requirements[0];

    public static RecordBuilder Phone => new RecordBuilder().Device(device => device with { Released = new(2025, 7, 1) }).Part("frame");

    public static RecordBuilder Tablet => Phone.Device(device => device with { Kind = "slate-tablet" });

    public static RecordBuilder Other => Phone.Device(device => device with { Kind = "laptop" });

    /// <summary>Adds a part that one operation frees from the frame: a joint, the tool used, where and by whom.</summary>
    public static RecordBuilder Held(
        this RecordBuilder builder, string part, OneOf<Reuse> reuse, OneOf<ToolClass> tool, OneOf<WorkEnvironment> environment, OneOf<Skill> skill) =>
        builder.Part(part)
            .Screw($"{part}-screws", [part, "frame"], "cross-h", 1.6m, 3, 2, joint => joint with { Reuse = reuse })
            .Tool($"{part}-tool", tool)
            .Operation($"free-{part}", OperationAction.Unscrew, [$"{part}-tool"], [$"{part}-screws"], [part],
                configure: operation => operation with { Environment = environment, Skill = skill });

    /// <summary>Adds a part that everybody can free at home with a basic tool and nothing lost.</summary>
    public static RecordBuilder Held(this RecordBuilder builder, string part) =>
        builder.Held(part, Reuse.Reusable, ToolClass.Basic, WorkEnvironment.Use, Skill.Layman);

    /// <summary>Says of the battery how long it lasts and of the device how it is protected.</summary>
    public static RecordBuilder Lasting(this RecordBuilder builder, Quantity percent, Quantity cycles, string code) => builder
        .Device(device => device with { IngressProtection = code })
        .With(record => record with
        {
            Parts = [.. record.Parts.Select(part => part.Role != Roles.Battery ? part : part with
            {
                Specs =
                [
                    new() { Name = "capacity-after-500-cycles", Value = percent, Unit = "%" },
                    new() { Name = "cycles-to-80-percent", Value = cycles, Unit = "cycles" },
                ],
            })],
        });

    public static ImmutableArray<Finding> Check(this RecordBuilder builder, string date = "2026-01-15") =>
        Set.Check(builder.ToCase(), DateOnly.Parse(date, CultureInfo.InvariantCulture));

    public static Finding Find(this RecordBuilder builder, string rule, string date = "2026-01-15") =>
        builder.Check(date).Single(finding => finding.Rule == rule);

    /// <summary>Fails unless the finding on a rule has this article, status and code.</summary>
    public static void Says(this RecordBuilder builder, string rule, string article, FindingStatus status, string code)
    {
        var finding = builder.Find(rule);
        Assert.Equal((article, status, code), (finding.Article, finding.Status, finding.Why.Code));
    }
}
