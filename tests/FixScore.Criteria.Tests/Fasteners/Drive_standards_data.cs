using FixScore.Criteria.Fasteners;

namespace FixScore.Criteria.Tests.Fasteners;

/// <summary>
/// Numbers from the catalogues of ISO: ISO 4757 (cross recesses for screws), ISO 10664 (hexalobular internal driving feature),
/// ISO 2936 (hexagon socket keys), ISO 2380 (screwdrivers for slotted heads). From memory: JIS B 1012, ASME B18.6 series.
/// </summary>
public sealed class Drive_standards_data
{
    [Theory]
    [InlineData("cross-h", "ISO 4757", "read")]
    [InlineData("cross-z", "ISO 4757", "read")]
    [InlineData("cross-jis", "JIS B 1012", "memory")]
    [InlineData("hexalobular", "ISO 10664", "read")]
    [InlineData("hexagon-socket", "ISO 2936", "read")]
    [InlineData("slot", "ISO 2380", "read")]
    [InlineData("square", "ASME B18.6 series", "memory")]
    public void A_standard_drive_names_its_standard(string slug, string standard, string standing)
    {
        var drive = DriveStandards.Find(slug);
        Assert.Equal((standard, standing), (drive?.Standard, drive?.Standing));
    }

    // Common practice, no source: no standard is published for these.
    [Theory]
    [InlineData("hexalobular-pin")]
    [InlineData("five-lobe")]
    [InlineData("three-wing")]
    [InlineData("spanner-two-hole")]
    public void A_drive_without_a_published_standard_says_so(string slug)
    {
        var outcome = new FastenerDiversityCriterion().On(Sample.Held(Sample.Screw("screws", 2, slug, 1.2m, 3)));
        Assert.Contains("no published standard", outcome.Because("drive-without-standard").Text, StringComparison.Ordinal);
        Assert.Equal(100, outcome.Score.Low);
    }

    [Fact]
    public void A_drive_outside_the_list_is_not_judged() =>
        Assert.Equal("/joints/0", new FastenerDiversityCriterion().On(Sample.Held(Sample.Screw("screws", 2, "clutch", 1.2m, 3)))
            .Because("drive-not-listed").Pointers[0].Text);

    [Fact]
    public void Every_listed_drive_has_a_slug_of_its_own_and_a_standing()
    {
        Assert.Equal(11, DriveStandards.All.Count());
        Assert.All(DriveStandards.All, drive => Assert.Contains(drive.Standing, (string[])["read", "memory"]));
    }
}
