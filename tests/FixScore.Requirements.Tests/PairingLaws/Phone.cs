using FixScore.Requirements.PairingLaws;

namespace FixScore.Requirements.Tests.PairingLaws;

/// <summary>An invented phone with a main board, a display and a battery, released when all three laws hold, and trials on its unit <c>unit-a</c>.</summary>
static class Phone
{
    static readonly Catalogue Laws = Catalogue.Of(new PairingLawsPlugin());

    public static string[] Sets { get; } = ["us-co-hb24-1121", "us-or-sb-1596", "us-wa-hb-1483"];

    public static string[] Rules { get; } = ["blocked-part", "reduced-function", "misleading-alert"];

    public static RecordBuilder Bare => new RecordBuilder().Device(device => device with { Released = new(2026, 6, 1) }).Part("mainboard");

    public static RecordBuilder WithDisplay => Bare.Part("display", Roles.DisplayAssembly);

    public static RecordBuilder WithDisplayAndBattery => WithDisplay.Part("battery");

    /// <summary>A trial with parts of <c>unit-b</c> and one check, boot lock as delivered and nothing done afterwards unless <paramref name="change"/> says so.</summary>
    public static RecordBuilder Tried(this RecordBuilder builder, string parts, OneOf<SwapResult> result, Func<SwapTrial, SwapTrial>? change = null)
    {
        var trial = new SwapTrial
        {
            Id = $"{parts.Replace(' ', '-')}-trial", Host = "unit-a", LockState = LockState.Locked, Software = "1.0", Procedure = SwapProcedure.None,
            Installed = [.. parts.Split(' ').Select(part => new InstalledPart(part, "unit-b"))],
            Checks = [new() { Function = "touch", Result = result }],
        };
        return builder.Swap(change?.Invoke(trial) ?? trial);
    }

    public static RecordBuilder Integral(this RecordBuilder builder, params ImmutableArray<string> parts) =>
        builder.Joint($"{string.Join('-', parts)}-joint", parts, JointKind.Solder, joint => joint with { Integral = true });

    public static ImmutableArray<Finding> Check(this RecordBuilder builder, string set, string date = "2026-07-01") =>
        Laws.Requirements.Single(each => each.Item.Info.Id == set).Check(builder.ToCase(), DateOnly.Parse(date, System.Globalization.CultureInfo.InvariantCulture));

    public static Finding Find(this RecordBuilder builder, string set, string rule) => builder.Check(set).Single(finding => finding.Rule == rule);
}
