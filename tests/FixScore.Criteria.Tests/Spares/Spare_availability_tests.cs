using FixScore.Criteria.Spares;
using FixScore.Testing;

namespace FixScore.Criteria.Tests.Spares;

/// <summary>Regulation (EU) 2023/1669 Annex IV point 5, score for spare parts.</summary>
public sealed class Spare_availability_tests
{
    static readonly SpareAvailabilityCriterion Criterion = new();
    static readonly (Option, object) Lowest = (Options.NoLevel, WhenNoLevel.Lowest);

    [Theory]
    [InlineData(9, 5)] // Annex IV point 5: all priority parts to end users and professional repairers
    [InlineData(5, 4)] // display, battery, back cover and cameras to both; the rest to professional repairers
    [InlineData(3, 3)] // display, battery, back cover
    [InlineData(2, 2)] // display, battery
    [InlineData(1, 1)] // display
    public void The_law_gives_one_to_five_points(int toEveryone, int points)
    {
        var outcome = Criterion.Judge(Contexts.For(Criterion, new RecordCase(Offered.ToEveryone(toEveryone)), new Scale(1, 5)));
        Assert.Equal(points, outcome.Score);
        Assert.Equal<Interval?>(points, outcome.Because("rung").Points);
    }

    [Theory]
    [InlineData(4)]
    [InlineData(6)]
    [InlineData(8)]
    public void A_rung_that_is_reached_in_part_does_not_count(int toEveryone) =>
        Scores(toEveryone == 4 ? 50 : 75, Offered.ToEveryone(toEveryone));

    [Fact]
    public void A_higher_rung_does_not_make_up_for_a_lower_one() =>
        Scores(0, Offered.ToEveryone(9).But("battery", Offered.Spare("battery", Audience.Repairers)));

    [Fact]
    public void Below_the_lowest_rung_there_is_no_level()
    {
        Scores(new(0, 100), Offered.ToEveryone(0));
        Assert.Equal(0, Criterion.On(Offered.ToEveryone(0), Lowest).Score);
        Criterion.On(Offered.ToEveryone(0)).Because("no-rung");
    }

    [Theory]
    [InlineData(Audience.Authorised)]
    [InlineData(Audience.Nobody)]
    public void A_spare_that_professionals_cannot_buy_leaves_no_level(Audience audience)
    {
        var record = Offered.ToEveryone(9).But("speaker", Offered.Spare("speaker", audience));
        Scores(new(0, 100), record);
        Assert.Equal(0, Criterion.On(record, Lowest).Score);
    }

    [Fact]
    public void An_absent_role_does_not_hinder()
    {
        var record = Without(Offered.ToEveryone(9), "speaker") with { Absent = ["speaker"] };
        Scores(100, record);
        Assert.Equal("/absent/0", Criterion.On(record).Because("role-absent").Pointers[0].Text);
    }

    [Fact]
    public void A_role_that_is_neither_there_nor_absent_may_be_anything()
    {
        var record = Without(Offered.ToEveryone(9), "speaker");
        Assert.Equal(new Interval(0, 100), Criterion.On(record, Lowest).Score);
        Assert.Contains("speaker", Assert.Single(Criterion.On(record).Missing).What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hinge_is_asked_for_only_where_the_display_folds() // Annex IV point 5: foldable smartphones only
    {
        (Option, object) ladder = (SpareAvailabilityOptions.Ladder, Levels.Of(("display-assembly", 20m), ("hinge", 100m)));
        var record = Offered.ToEveryone(9);
        Assert.Equal(100, Criterion.On(record, ladder).Score);
        Assert.Equal("hinge", Criterion.On(record, ladder).Because("role-not-expected").Values[0].Value.Text);
        Assert.Equal(new Interval(0, 100), Criterion.On(record with { Device = record.Device with { Foldable = true } }, ladder).Score);
        Assert.Equal(new Interval(0, 100), Criterion.On(record with { Device = record.Device with { Kind = "laptop" } }, ladder).Score);
    }

    [Fact]
    public void An_unknown_audience_gives_the_hull_of_the_best_and_the_worst_case()
    {
        var record = Offered.ToEveryone(9).But("back-cover", Offered.Spare("back-cover", default));
        Scores(new(0, 100), record);
        Scores(new(25, 100), Offered.ToEveryone(9).But("back-cover", Offered.Spare("back-cover", new(Audience.Public, Audience.Repairers))));
        Scores(75, Offered.ToEveryone(5).But("speaker", Offered.Spare("speaker", new(Audience.Public, Audience.Repairers))));
        Assert.Contains(new("/spares/8", "audience"), Criterion.On(record).Missing.Select(missing => (missing.At.Text, missing.What)));
    }

    [Fact]
    public void A_spare_that_is_not_listed_may_be_anything_and_an_empty_list_says_there_is_none()
    {
        Assert.Equal(new Interval(0, 100), Criterion.On(Offered.ToEveryone(9).But("speaker"), Lowest).Score);
        Assert.Equal(0, Criterion.On(Offered.With(), Lowest).Score);
        Assert.Equal(OutcomeKind.Unknown, Criterion.On(Offered.With() with { Spares = default }).Kind);
    }

    [Fact]
    public void Of_several_parts_with_one_role_the_worst_counts_and_of_several_spares_the_best()
    {
        var second = Offered.ToEveryone(9) with
        {
            Parts = [.. Offered.Roles.Select(role => Sample.Part(role)), Sample.Part("camera-2", "rear-camera")],
        };
        Scores(50, second.But("camera-2", Offered.Spare("camera-2", Audience.Repairers)));
        Scores(100, second.But("camera-2", Offered.Spare("camera-2", Audience.Repairers), Offered.Spare("camera-2", Audience.Public)));
    }

    [Fact]
    public void A_spare_of_a_part_counts_for_all_that_integral_joints_tie_to_it()
    {
        var record = Offered.ToEveryone(9).But("microphone") with
        {
            Joints = [Sample.Joint("one", JointKind.Solder, "microphone", "speaker") with { Integral = true }],
        };
        Scores(100, record);
        Assert.Equal(new Interval(0, 100), Criterion.On(record with { Joints = [] }, Lowest).Score);
    }

    [Fact]
    public void Without_joints_any_spare_may_serve_any_part()
    {
        var record = Offered.ToEveryone(2) with { Joints = default };
        Scores(new(25, 100), record);
        Assert.Contains(Criterion.On(record).Missing, missing => missing.What == "joints");
    }

    [Fact]
    public void A_ladder_without_roles_is_not_applicable() => Assert.Equal(
        OutcomeKind.NotApplicable, Criterion.On(Offered.ToEveryone(9), (SpareAvailabilityOptions.Ladder, Levels.Of(ImmutableArray<Level>.Empty))).Kind);

    [Fact]
    public void A_reason_says_who_can_buy_and_where_that_stands()
    {
        var reason = Criterion.On(Offered.ToEveryone(1)).Reasons.Single(each => each.Text == "Spare for battery: sold to professionals.");
        Assert.Equal(["/parts/1", "/spares/1"], reason.Pointers.Select(pointer => pointer.Text));
    }

    static void Scores(Interval expected, TeardownRecord record)
    {
        var outcome = Criterion.On(record);
        Assert.Equal(expected, outcome.Score);
        outcome.PointsInto(record);
    }

    static TeardownRecord Without(TeardownRecord record, string role) =>
        record.But(role) with { Parts = [.. record.Parts.Where(part => part.Role != role)] };
}
