using FixScore.Criteria.Support;
using FixScore.Testing;

namespace FixScore.Criteria.Tests.Support;

/// <summary>Regulation (EU) 2023/1669 Annex IV point 5, score for software updates.</summary>
public sealed class Software_support_tests
{
    static readonly SoftwareSupportCriterion Criterion = new();
    static readonly (Option, object) Interpolated = (SoftwareSupportOptions.Fractions, YearFractions.Interpolate);
    static readonly (Option, object) Lowest = (Options.NoLevel, WhenNoLevel.Lowest);

    [Theory]
    [InlineData(9, 5)] // Annex IV point 5: at least 7 years
    [InlineData(7, 5)] // at least 7 years
    [InlineData(6, 3)] // 6 years
    [InlineData(5, 1)] // 5 years
    public void The_law_gives_one_three_or_five_points(int years, int points) => Assert.Equal(
        points, Criterion.Judge(Contexts.For(Criterion, new RecordCase(For(years)), new Scale(1, 5))).Score);

    [Fact]
    public void Below_five_years_there_is_no_level()
    {
        Scores(new(0, 100), For(4));
        Assert.Equal(0, Criterion.On(For(4), Lowest).Score);
    }

    [Fact]
    public void A_part_of_a_year_does_not_count() => Scores(50, For(6.9m));

    [Theory]
    [InlineData(6.5, 75)]
    [InlineData(5.2, 10)]
    [InlineData(7.5, 100)]
    [InlineData(4.9, -1)]
    public void Interpolated_points_lie_between_the_steps(double years, int points) => Assert.Equal(
        points < 0 ? new Interval(0, 100) : points, Criterion.On(For((decimal)years), Interpolated).Score);

    [Fact]
    public void Interpolated_ranges_span_what_has_no_level_too()
    {
        Assert.Equal(new Interval(0, 75), Criterion.On(For(new(4, 6.5m)), Interpolated, Lowest).Score);
        Assert.Equal(new Interval(75, 100), Criterion.On(For(new(6.5m, null)), Interpolated).Score);
        (Option, object) risk = (SoftwareSupportOptions.Bands, Bands.AtMost((2, 100), (4, 50)));
        Assert.Equal(new Interval(0, 75), Criterion.On(For(new(3, 5)), Interpolated, Lowest, risk).Score);
        Assert.Equal(0, Criterion.On(For(5), Interpolated, Lowest, risk).Score);
    }

    [Fact]
    public void The_shortest_kind_counts()
    {
        var record = With(support => support with { FunctionalityUpdateYears = 6 });
        Scores(50, record);
        Assert.Equal(100, Criterion.On(record, (SoftwareSupportOptions.Kinds, Kinds("security", "corrective"))).Score);
        Assert.Equal("Updates (security, corrective, functionality) are promised for 6 years, counted from end-of-placement.",
            Criterion.On(record).Because("update-years").Text);
    }

    [Fact]
    public void A_kind_that_is_not_recorded_may_be_the_shortest()
    {
        var outcome = Criterion.On(With(support => support with { SecurityUpdateYears = null, CorrectiveUpdateYears = 6 }), Lowest);
        Assert.Equal(new Interval(0, 50), outcome.Score);
        Assert.Equal("years of security updates", Assert.Single(outcome.Missing).What);
    }

    [Fact]
    public void Years_counted_from_another_event_cannot_be_converted() // Annex IV point 5: from the end of placement on the market
    {
        (Option, object) placement = (SoftwareSupportOptions.CountedFrom, SupportStart.EndOfPlacement);
        Assert.Equal(100, Criterion.On(For(7), placement).Score);
        var released = Criterion.On(With(support => support with { CountedFrom = CountedFrom.Release }), placement);
        Assert.Equal(new Interval(0, 100), released.Score);
        Assert.Equal("Years counted from release cannot be converted into years from end-of-placement.", released.Because("counted-from-other").Text);
        var open = Criterion.On(With(support => support with { CountedFrom = default }), placement);
        Assert.Equal(new Interval(0, 100), open.Score);
        open.Because("counting-unknown");
    }

    [Fact]
    public void Without_years_of_any_kind_asked_for_the_answer_is_unknown()
    {
        Assert.Equal("support", Assert.Single(Criterion.On(Sample.Record(Sample.Part("frame"))).Missing).What);
        Assert.Equal(OutcomeKind.Unknown, Criterion.On(With(_ => new())).Kind);
        Assert.Equal(OutcomeKind.Unknown, Criterion.On(For(7), (SoftwareSupportOptions.Kinds, Kinds("maps"))).Kind);
    }

    [Fact]
    public void A_profile_that_asks_for_nothing_is_not_applicable() =>
        Assert.Equal(OutcomeKind.NotApplicable, Criterion.On(For(7), (SoftwareSupportOptions.Kinds, Kinds())).Kind);

    static void Scores(Interval expected, TeardownRecord record)
    {
        Assert.Equal(expected, Criterion.On(record).Score);
        Criterion.On(record).PointsInto(record);
    }

    static ImmutableArray<string> Kinds(params ImmutableArray<string> kinds) => kinds;

    static TeardownRecord For(Quantity years) =>
        With(_ => new() { SecurityUpdateYears = years, CorrectiveUpdateYears = years, FunctionalityUpdateYears = years, CountedFrom = CountedFrom.EndOfPlacement });

    static TeardownRecord With(Func<Records.Support, Records.Support> change) => Sample.Record(Sample.Part("frame")) with
    {
        Support = change(new() { SecurityUpdateYears = 8, CorrectiveUpdateYears = 8, FunctionalityUpdateYears = 8, CountedFrom = CountedFrom.EndOfPlacement }),
    };
}
