using FixScore.Criteria.Adhesives;

namespace FixScore.Criteria.Tests.Adhesives;

/// <summary>Forces from strengths as the standards define them.</summary>
public sealed class Published_bond_forces
{
    // ISO 29862 states 180-degree peel in newtons per 25 mm of width (24 or 25 mm strips in ASTM D3330, from memory).
    [Theory]
    [InlineData(12, 6, 2.88)]
    [InlineData(8, 10, 3.2)]
    public void Peel_strength_times_width_is_the_peel_force(double strength, double width, double newtons) =>
        Assert.Equal((decimal)newtons, Force(new() { PeelNPer25Mm = (decimal)strength, WidthMm = (decimal)width }, "peel-force").Low);

    // The lap of an ISO 4587 coupon is 25 mm by 12.5 mm (from memory), 312.5 mm2.
    [Theory]
    [InlineData(5, 1562.5)]
    [InlineData(12, 3750)]
    public void Lap_shear_strength_times_area_is_the_shear_force(double strength, double newtons) =>
        Assert.Equal((decimal)newtons, Force(new() { ShearMPa = (decimal)strength, AreaMm2 = 312.5m }, "shear-force").Low);

    [Fact]
    public void A_range_of_strength_is_a_range_of_force() =>
        Assert.Equal(new Interval(2.88m, 5.76m), Force(new() { PeelNPer25Mm = new(12, 24), WidthMm = 6 }, "peel-force"));

    static Interval Force(Adhesive adhesive, string code)
    {
        var outcome = new AdhesiveStrengthCriterion().On(Bonded.With(Bonded.Glue with { Adhesive = adhesive }, Bonded.Out("card")), "battery");
        return outcome.Because(code).Values.Single(value => value.Name == "force").Value.Number;
    }
}
