namespace FixScore.Requirements.Tests.Ecodesign;

/// <summary>
/// Annex II B/D 1.1(1), consolidated text of 20 June 2025 (read): no bundles of several listed types only, except a microphone within a speaker or
/// charging port, audio and charging as one port, and small parts within a larger assembly that is protected and lasts.
/// </summary>
public sealed class SpareBundleTests
{
    const string Rule = "spares-not-bundled", Article = "Annex II B 1.1(1)";

    static RecordBuilder Sold(string parts, Audience audience = Audience.Public)
    {
        var ids = parts.Split(' ');
        var builder = ids.Aggregate(Device.Phone, (device, id) => device.Part(id));
        foreach (var id in ids) builder.Spare(id, audience, spare => spare with { OnlyBundledWith = [.. ids.Where(other => other != id)] });
        return builder;
    }

    [Theory]
    [InlineData("battery")]
    [InlineData("battery mainboard")]
    [InlineData("microphone speaker")]
    [InlineData("microphone charging-port")]
    [InlineData("external-audio-connector charging-port")]
    public void These_may_be_sold_together(string parts) => Sold(parts).Says(Rule, Article, FindingStatus.Met, "no-bundles");

    [Theory]
    [InlineData("battery display-assembly")]
    [InlineData("front-camera rear-camera")]
    [InlineData("battery display-assembly microphone")]
    public void These_may_not(string parts) => Sold(parts).Says(Rule, Article, FindingStatus.NotMet, "bundle");

    [Theory]
    [InlineData("IP67", FindingStatus.Unknown, "bundle-cycles-unknown")]
    [InlineData("IP54", FindingStatus.NotMet, "bundle-not-protected")]
    [InlineData(null, FindingStatus.Unknown, "bundle-cycles-unknown")]
    public void Small_parts_within_a_larger_assembly_may_when_it_is_protected_and_lasts(string? code, FindingStatus status, string reason) =>
        Sold("display-assembly speaker button").Device(device => device with { IngressProtection = code }).Says(Rule, Article, status, reason);

    [Fact]
    public void A_spare_sold_by_itself_as_well_is_no_bundle() =>
        Sold("battery display-assembly").Spare("battery", Audience.Public).Spare("display-assembly", Audience.Public).Says(Rule, Article, FindingStatus.Met, "no-bundles");

    [Fact]
    public void What_is_replaced_together_is_sold_together() => Device.Phone.Part("display-assembly").Part("front-camera")
        .Joint("glue", ["display-assembly", "front-camera"], JointKind.Adhesive, joint => joint with { Integral = true })
        .Spare("display-assembly", Audience.Public).Says(Rule, Article, FindingStatus.NotMet, "bundle");

    [Fact]
    public void A_listed_part_of_which_no_spare_is_listed_leaves_it_open() => Sold("battery").Part("speaker").Says(Rule, Article, FindingStatus.Unknown, "spare-not-listed");

    [Fact]
    public void Spares_that_were_not_looked_for_leave_it_open() => Device.Phone.Part("battery").Says(Rule, Article, FindingStatus.Unknown, "spares-not-recorded");

    [Fact]
    public void Where_nothing_is_on_offer_nothing_is_bundled()
    {
        Device.Phone.Part("battery").With(record => record with { Spares = [] }).Says(Rule, Article, FindingStatus.NotApplicable, "no-listed-spares");
        Sold("battery display-assembly", Audience.Nobody).Says(Rule, Article, FindingStatus.NotApplicable, "no-listed-spares");
    }
}
