using FixScore.Criteria.Fasteners;

namespace FixScore.Criteria.Tests.Fasteners;

public sealed class Fastener_diversity_tests
{
    static readonly FastenerDiversityCriterion Criterion = new();

    [Fact]
    public void Joints_that_were_not_recorded_are_unknown() =>
        Assert.Equal(OutcomeKind.Unknown, Criterion.On(Sample.Record(Sample.Part("frame"))).Kind);

    [Fact]
    public void A_device_without_screws_has_the_top()
    {
        var outcome = Criterion.On(Sample.Held(Sample.Joint("clip", JointKind.SnapFit)));
        Assert.Equal(100, outcome.Score.Low);
        Assert.Equal("/joints", outcome.Because("no-screws").Pointers[0].Text);
    }

    [Fact]
    public void One_type_has_the_top_and_two_in_equal_numbers_have_85()
    {
        var one = Sample.Screw("a", 4, "cross-h", 1.2m, 3);
        Assert.Equal(100, Criterion.On(Sample.Held(one)).Score);
        Assert.Equal(85, Criterion.On(Sample.Held(one, Sample.Screw("b", 4, "slot", 1.2m, 3))).Score);
    }

    [Fact]
    public void The_same_type_in_two_places_is_one_type() =>
        Assert.Equal(100, Criterion.On(Sample.Held(
            Sample.Screw("a", 4, "cross-h", 1.2m, 3), Sample.Screw("b", 9, "cross-h", 1.20m, 3.0m))).Score);

    [Fact]
    public void Screws_that_nobody_undoes_do_not_count() =>
        Assert.Equal(100, Criterion.On(Sample.Held(
            Sample.Screw("a", 4, "cross-h", 1.2m, 3),
            Sample.Screw("b", 4, "slot", 1.2m, 3) with { Integral = true })).Score);

    [Fact]
    public void A_screw_of_unknown_type_is_alike_or_new()
    {
        var outcome = Criterion.On(Sample.Held(Sample.Screw("a", 4, "cross-h", 1.2m, 3), Sample.Screw("b", 4, (Screw?)null)));
        Assert.Equal(new Interval(85, 100), outcome.Score);
        Assert.Equal(["screw.drive", "screw.diameterMm", "screw.lengthMm"], outcome.Missing.Select(missing => missing.What));
    }

    [Fact]
    public void A_drive_that_is_one_of_two_others_stays_different_from_a_third() =>
        Assert.Equal(85, Criterion.On(Sample.Held(
            Sample.Screw("a", 4, "cross-h", 1.2m, 3),
            Sample.Screw("b", 4, new Screw(new("slot", "cross-z"), 1.2m, 3)))).Score);

    [Fact]
    public void Lengths_that_overlap_may_be_alike_and_lengths_apart_are_not()
    {
        var fixedLength = Sample.Screw("a", 4, "cross-h", 1.2m, 3);
        Assert.Equal(new Interval(85, 100), Criterion.On(Sample.Held(fixedLength, Ranged(2.5m, 3.5m))).Score);
        Assert.Equal(85, Criterion.On(Sample.Held(fixedLength, Ranged(3.5m, 4.5m))).Score);

        static Joint Ranged(decimal min, decimal max) => Sample.Screw("b", 4, new Screw("cross-h", 1.2m, new(min, max)));
    }

    [Fact]
    public void Screws_alike_but_for_length_are_named_with_where_they_are()
    {
        var outcome = Criterion.On(Sample.Held(
            Sample.Screw("a", 4, "cross-h", 1.2m, 3), Sample.Screw("b", 2, "slot", 1.2m, 5), Sample.Screw("c", 1, "cross-h", 1.2m, 4.5m)));
        var hazard = outcome.Because("alike-but-for-length");
        Assert.Equal(["/joints/0", "/joints/2"], hazard.Pointers.Select(pointer => pointer.Text));
        Assert.Contains("3 to 4.5 mm", hazard.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Screws_that_may_be_missing_altogether_reach_to_the_top() =>
        Assert.Equal(new Interval(85, 100), Criterion.On(Sample.Held(
            Sample.Screw("a", new Quantity(0, 4), "cross-h", 1.2m, 3), Sample.Screw("b", new Quantity(0, 4), "slot", 1.2m, 3))).Score);

    // min: 10 and 1, 121 / 101; max: 4 and 4 (any t in both ranges), exactly 2.
    [Fact]
    public void Ranges_of_counts_give_the_lowest_corner_and_the_most_even_filling() =>
        Assert.Equal(new Interval(1.1980198019801980198019801980m, 2m), FastenerDiversityFacts.Of(Sample.Held(
            Sample.Screw("a", new Quantity(4, 10), "cross-h", 1.2m, 3), Sample.Screw("b", new Quantity(1, 4), "slot", 1.2m, 3))).Effective);

    // Two fixed of 1 and 3, one floating: s1 = 4, s2 = 10, peak at t = 2.5 with 1 + 16 / 10.
    [Fact]
    public void The_peak_between_limits_is_found() =>
        Assert.Equal(2.6m, FastenerDiversityFacts.Of(Sample.Held(
            Sample.Screw("a", 1, "cross-h", 1.2m, 3), Sample.Screw("b", 3, "slot", 1.2m, 3),
            Sample.Screw("c", new Quantity(0, null), "square", 1.2m, 3))).Effective.High);

    [Fact]
    public void Huge_counts_and_many_ranges_are_bounded_not_searched()
    {
        Joint[] many = [.. Enumerable.Range(0, 60).Select(i => Sample.Screw($"s-{i}", new Quantity(1, 9), "cross-h", 1.2m, 1 + i))];
        Assert.Equal(new Interval(1, 60), FastenerDiversityFacts.Of(Sample.Held(many)).Effective);
        Assert.Equal(new Interval(1, 2), FastenerDiversityFacts.Of(Sample.Held(
            Sample.Screw("a", 999_999_999_999_999m, "cross-h", 1.2m, 3), Sample.Screw("b", 1, "slot", 1.2m, 3))).Effective);
    }
}
