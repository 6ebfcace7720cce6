using FixScore.Criteria.Adhesives;

namespace FixScore.Criteria.Tests.Adhesives;

public sealed class Adhesive_strength_tests
{
    static readonly AdhesiveStrengthCriterion Criterion = new();
    static readonly Joint Measured = Bonded.Glue with { Adhesive = new() { Type = AdhesiveType.Foam, PeelNPer25Mm = 50, WidthMm = 10 } };

    [Fact]
    public void Joints_that_were_not_recorded_are_unknown() =>
        Assert.Equal(OutcomeKind.Unknown, Criterion.On(Bonded.By() with { Joints = default }, "battery").Kind);

    [Fact]
    public void A_part_that_nothing_describes_is_unknown() =>
        Assert.Equal(OutcomeKind.Unknown, Criterion.On(Bonded.With(Sample.Joint("clip", JointKind.SnapFit, "frame", "cover")), "battery").Kind);

    [Fact]
    public void A_part_held_without_bonds_has_the_top()
    {
        var outcome = Criterion.On(Bonded.With(Sample.Joint("clip", JointKind.SnapFit, "battery", "frame")), "battery");
        Assert.Equal(100, outcome.Score);
        Assert.Equal("/parts/1", outcome.Because("no-bonds").Pointers[0].Text);
    }

    [Fact]
    public void A_bond_that_nothing_opens_spans_all_levels()
    {
        var outcome = Criterion.On(Bonded.By(), "battery", Bonded.Firm);
        Assert.Equal(new Interval(0, 100), outcome.Score);
        Assert.Contains("an operation that undoes it", outcome.Missing.Select(missing => missing.What));
    }

    [Fact]
    public void The_worst_bond_counts()
    {
        var record = Bonded.By(Bonded.Out("card"), Bonded.Out("plate-100") with { Id = "cut", Undoes = ["tape"] }) with
        {
            Joints = [Bonded.Glue, Sample.Joint("tape", JointKind.Tape, "battery", "frame")],
        };
        Assert.Equal(25, Criterion.On(record, "battery", Bonded.Firm).Score);
    }

    [Fact]
    public void Bonds_inside_the_group_and_to_what_rides_on_it_need_not_be_opened()
    {
        var record = Bonded.By(Bonded.Out("card")) with
        {
            Parts = [Sample.Part("frame"), Sample.Part("battery"), Sample.Part("tray"), Sample.Part("label", on: "battery")],
            Joints =
            [
                Bonded.Glue,
                Sample.Joint("inner", JointKind.Adhesive, "battery", "tray") with { Integral = true },
                Sample.Joint("sticker", JointKind.Tape, "battery", "label"),
            ],
        };
        Assert.Equal(70, Criterion.On(record, "tray", Bonded.Firm).Score);
        Assert.Equal(OutcomeKind.Scored, Criterion.On(record, "label", Bonded.Firm).Kind);
    }

    // 50 N/25 mm over 10 mm is 20 N: three quarters of the scale. Heat of 100 degrees is assumed to be a quarter, off by up to 15.
    [Fact]
    public void A_measured_force_decides_within_the_tolerance_of_what_is_assumed()
    {
        var record = Bonded.With(Measured, Bonded.Out("plate-100"));
        Assert.Equal(40, new AdhesiveStrengthCriterion().On(record, "battery").Score);
        Assert.Equal<Interval?>(40, new AdhesiveStrengthCriterion().On(record, "battery").Because("peel-force").Points);
        Assert.Equal(25, Criterion.On(record, "battery", (AdhesiveStrengthOptions.Tolerance, 0m)).Score);
        Assert.Equal(75, Criterion.On(record, "battery", (AdhesiveStrengthOptions.Tolerance, 1m)).Score);
    }

    [Fact]
    public void What_is_only_assumed_spans_the_tolerance()
    {
        var outcome = new AdhesiveStrengthCriterion().On(Bonded.With(Bonded.Glue, Bonded.Out("card")), "battery");
        Assert.Equal(new Interval(55, 85), outcome.Score);
        Assert.Contains(outcome.Missing, missing => missing.What.Contains("peelNPer25Mm", StringComparison.Ordinal));
    }

    [Fact]
    public void A_bond_that_only_damage_opens_stays_at_damage_whatever_its_force() =>
        Assert.Equal(0, Decided(Measured, Bonded.Out() with { Damages = ["battery"] }));

    [Fact]
    public void Where_force_alone_decides_an_unmeasured_bond_is_open() =>
        Assert.Equal(new Interval(0, 100), Decided(Bonded.Glue, Bonded.Out("card")));

    [Fact]
    public void Where_force_decides_an_unknown_width_leaves_all_forces_open() =>
        Assert.Equal(new Interval(0, 100), Decided(Bonded.Glue with { Adhesive = new() { Type = AdhesiveType.Foam, PeelNPer25Mm = 50 } }, Bonded.Out("card")));

    // 20 N peel is 75, 60 N shear (0.5 MPa over 120 mm2) is 40.
    [Theory]
    [InlineData(AdhesiveType.PressureSensitive, 75, 75)]
    [InlineData(AdhesiveType.CuredLiquid, 40, 40)]
    [InlineData(null, 40, 75)]
    public void Tapes_count_by_peel_and_rigid_bonds_by_shear_and_an_unknown_type_by_both(AdhesiveType? type, int low, int high)
    {
        var adhesive = Measured.Adhesive! with { ShearMPa = 0.5m, AreaMm2 = 120, Type = type is { } known ? known : default(OneOf<AdhesiveType>) };
        Assert.Equal(new Interval(low, high), Decided(Bonded.Glue with { Adhesive = adhesive }, Bonded.Out("card")));
    }

    [Fact]
    public void The_greatest_numbers_a_record_can_hold_do_not_overflow() => Assert.Equal(0, Decided(
        Bonded.Glue with { Adhesive = new() { Type = AdhesiveType.Structural, ShearMPa = 999_999_999_999_999m, AreaMm2 = 999_999_999_999_999m } }, Bonded.Out("card")));

    [Fact]
    public void Heat_on_a_cell_carries_its_caution_and_heat_on_a_cover_does_not()
    {
        var record = Bonded.By(Bonded.Out("plate-60"));
        Assert.Contains("data sheet", Criterion.On(record, "battery", Bonded.Firm).Because("caution-heat-on-cell").Text, StringComparison.Ordinal);
        var cover = record with { Parts = [Sample.Part("frame"), Sample.Part("battery", role: "back-cover")] };
        Assert.DoesNotContain(Criterion.On(cover, "battery").Reasons, reason => reason.Code == "caution-heat-on-cell");
    }

    [Fact]
    public void Solvent_carries_its_caution() =>
        Assert.Contains("ventilate", Criterion.On(Bonded.By(Bonded.Out("dropper")), "battery").Because("caution-solvent").Text, StringComparison.Ordinal);

    [Fact]
    public void Tries_that_did_damage_are_said_and_cost_nothing()
    {
        OperationOutcome Went(OutcomeResult result) => new() { Unit = "unit-a", Result = result };
        var record = Bonded.By(Bonded.Out("card") with { Outcomes = [Went(OutcomeResult.Clean), Went(OutcomeResult.Damaged)] });
        var outcome = Criterion.On(record, "battery", Bonded.Firm);
        Assert.Equal(70, outcome.Score);
        Assert.Contains("1 of 2", outcome.Because("at-risk").Text, StringComparison.Ordinal);
        outcome.PointsInto(record);
    }

    static Interval Decided(Joint bond, params ReadOnlySpan<Operation> operations) =>
        Criterion.On(Bonded.With(bond, operations), "battery", (AdhesiveStrengthOptions.Tolerance, 1m)).Score;
}
