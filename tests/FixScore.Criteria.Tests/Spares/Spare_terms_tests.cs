using FixScore.Criteria.Spares;

namespace FixScore.Criteria.Tests.Spares;

/// <summary>7 years, 5 and 10 working days: Regulation (EU) 2023/1670 Annex II; points and other limits: own judgement, no source.</summary>
public sealed class Spare_terms_tests
{
    static readonly SpareTermsCriterion Criterion = new();
    static readonly (Option, object) Delivery = (SpareTermsOptions.Measure, SpareMeasure.DeliveryDays);
    static readonly Spare Sold = Offered.Spare("battery", Audience.Public) with { Years = 7, DeliveryDays = 5 };

    [Theory]
    [InlineData(12, 100)]
    [InlineData(7, 75)] // Annex II B and D 1.1(1): until at least 7 years after the end of placement
    [InlineData(6, 40)]
    [InlineData(1, 0)]
    public void More_years_have_more_points(int years, int points) => Scores(points, Sold with { Years = years });

    [Theory]
    [InlineData(1, 100)]
    [InlineData(5, 75)] // Annex II B and D 1.1(3): first 5 years of the period
    [InlineData(10, 40)] // the remaining years
    [InlineData(60, 0)]
    public void Fewer_days_have_more_points(int days, int points) =>
        Assert.Equal(points, Criterion.On(Offered.With(Sold with { DeliveryDays = days }), "battery", Delivery).Score);

    [Fact]
    public void A_range_gives_all_it_can_be()
    {
        Scores(new(40, 75), Sold with { Years = new(5, 8) });
        Scores(new(75, 100), Sold with { Years = new(7, null) });
        Assert.Equal("The spare for battery is kept on sale for 7 years or more.",
            Criterion.On(Offered.With(Sold with { Years = new(7, null) }), "battery").Because("spare-years").Text);
    }

    [Fact]
    public void A_spare_that_nobody_can_buy_has_the_lowest_points_and_one_that_may_be_such_spans_both()
    {
        Scores(0, Sold with { Audience = Audience.Nobody });
        Scores(new(0, 75), Sold with { Audience = default });
        Scores(75, Sold with { Audience = Audience.Authorised });
    }

    [Fact]
    public void The_best_spare_counts()
    {
        Scores(100, Sold, Sold with { Years = 10 });
        Scores(new(75, 100), Sold, Sold with { Years = null });
    }

    [Fact]
    public void Where_nothing_of_the_measure_is_recorded_the_answer_is_unknown()
    {
        Unknown("spares", Offered.With() with { Spares = default });
        Unknown("a spare for it", Offered.With(Offered.Spare("speaker", Audience.Public)));
        Unknown("years", Offered.With(Sold with { Years = null }));
    }

    [Fact]
    public void An_empty_list_says_that_nothing_is_sold()
    {
        var outcome = Criterion.On(Offered.With(), "battery");
        Assert.Equal(0, outcome.Score);
        Assert.Equal("/spares", outcome.Because("no-spares").Pointers[0].Text);
    }

    [Fact]
    public void A_spare_of_a_part_counts_for_all_that_integral_joints_tie_to_it()
    {
        var record = Offered.With(Sold) with
        {
            Joints = [Sample.Joint("one", JointKind.Adhesive, "battery", "back-cover") with { Integral = true }],
        };
        Assert.Equal(75, Criterion.On(record, "back-cover").Score);
    }

    [Fact]
    public void Without_joints_any_better_spare_may_serve_the_part()
    {
        var record = Offered.With(Sold, Sold with { Part = "speaker", Years = 10 }) with { Joints = default };
        Assert.Equal(new Interval(75, 100), Criterion.On(record, "battery").Score);
    }

    static void Unknown(string missing, TeardownRecord record)
    {
        var outcome = Criterion.On(record, "battery");
        Assert.Equal(OutcomeKind.Unknown, outcome.Kind);
        Assert.Equal(missing, Assert.Single(outcome.Missing).What);
    }

    static void Scores(Interval expected, params IEnumerable<Spare> spares)
    {
        var outcome = Criterion.On(Offered.With(spares), "battery");
        Assert.Equal(expected, outcome.Score);
        outcome.PointsInto(Offered.With(spares));
    }
}
