namespace FixScore.Laws.Tests.Europe;

/// <summary>Where Regulation (EU) 2023/1669 is silent. Which readings there are is our own judgement.</summary>
public sealed class ReadingsTests
{
    [Fact]
    public void Each_silent_point_is_listed_with_the_reading_taken() => Assert.Equal(
        ["first-tool", "route", "rounding", "lost-fastener", "proprietary-tool", "no-spare", "hinge-spare", "part-years", "too-few-years", "no-information"],
        Rules.Europe.Readings.Select(reading => reading.Id));

    [Fact] // 0.25 x 5 + 0.15 x (5 + 4 + 4 + 3 + 3) = 4.10; with one more step to each part 0.25 x 4 + 2.85 = 3.85
    public void Whether_the_first_tool_is_a_change_can_decide_the_class()
    {
        var reading = BetweenClasses().Score().Reading("first-tool");
        var other = Assert.Single(reading.Otherwise);
        Assert.Equal((true, (Interval)3.85m, new ClassRange("B", "B")), (reading.Decisive, other.Total, other.Class!));
    }

    [Fact] // 6.5 years lie half-way between 3 and 5 points: 4.10 + 0.15 = 4.25, still class A
    public void A_reading_that_changes_points_but_no_class_is_not_decisive()
    {
        var reading = BetweenClasses().Score().Reading("part-years");
        Assert.Equal((false, (Interval)4.25m), (reading.Decisive, Assert.Single(reading.Otherwise).Total));
    }

    [Fact] // six tenths of a hundredth decide: 3.9960 is class B exact and 4.00, class A, when rounded
    public void Rounding_the_index_first_can_decide_the_class()
    {
        var reading = Devices.Whole().Score(Rules.EuropeAnswering(3.996m)).Reading("rounding");
        Assert.True(reading.Decisive);
        Assert.Equal(["B", "A", "A"], new[] { Devices.Whole().Score(Rules.EuropeAnswering(3.996m)).Class!.Low, reading.Otherwise[1].Class!.Low, reading.Otherwise[2].Class!.Low });
    }

    [Fact] // Annex IV point 5: the count follows the maker's repair information; here three steps where one would do
    public void The_way_of_the_maker_counts_where_it_was_recorded()
    {
        var score = Devices.Whole().Brackets(2).Sequence("published", "battery", SequenceAuthor.Maker, "take-bracket-1", "take-bracket-2", "take-battery").Score();
        Assert.Equal((Interval)4, score.At("sdd/battery").Value);
        Assert.Equal(score.Total.Low + 0.25m * 0.30m, score.Reading("route").Otherwise[0].Total.Low);
    }

    [Theory]
    [InlineData("proprietary-tool")]
    [InlineData("no-spare")]
    [InlineData("too-few-years")]
    [InlineData("no-information")]
    [InlineData("lost-fastener")]
    public void What_has_no_level_is_the_lowest_and_otherwise_open(string reading)
    {
        var score = Devices.Whole(reuse: Reuse.Neither, tool: ToolClass.Proprietary).Years(3)
            .With(record => record with { Spares = [], Documentation = [] }).Score();
        var other = Assert.Single(score.Reading(reading).Otherwise);
        // 0.15 of the four points between 1 and 5
        Assert.Equal(new Interval(score.Total.Low, score.Total.Low + 0.60m), other.Total);
    }

    static RecordBuilder BetweenClasses() => Devices.Whole(2, tool: ToolClass.Basic, clipped: true)
        .Spares(true, "display-assembly", "battery", "back-cover", "front-camera", "rear-camera").Years(6.5m).Documents(Audience.Repairers);
}
